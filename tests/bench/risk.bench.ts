import { toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { Recalculation, simulate } from '@scantling/figures';
import type { Benchmark } from './benchmark.ts';
import { leastMs } from './least-ms.ts';
import { workshopSheet } from './workshop-sheet.ts';

const SAMPLES = 10_000;

/** The 200-line sheet with every run time known at three points, of fifty different forms. */
function sheetWithTimes(): Recalculation {
  const input = workshopSheet(200);
  const operations = input.bill.operations.map((operation, index) => ({
    ...operation,
    runHoursLow: String(Number(operation.runHours) * (0.5 + (index % 50) / 200)),
    runHoursHigh: String(Number(operation.runHours) * 1.8),
  }));
  const sheet = costSheet({ ...input, bill: { ...input.bill, operations } });
  return new Recalculation(toWorkedCostSheet(sheet, { withDerivations: true }).figures);
}

function simulationMs(sheet: Recalculation): number {
  return leastMs(10, () => {
    const { results } = simulate(sheet, {
      results: ['pieces-1/price/list'],
      uncertain: {},
      usesThreePoints: true,
      shape: 'pert',
      doHoursMoveTogether: true,
      samples: SAMPLES,
      seed: 1,
    });
    if ((results[0]?.statistics?.sd ?? 0) <= 0) throw new Error('nothing was sampled');
  });
}

/** The sums of the same sheet alone, on times that stand ready: hours, labour, overhead, contingency, price. */
function arithmeticMs(): number {
  const lines = 100;
  const times = new Float64Array(lines * SAMPLES).fill(0.4);
  const rates = new Float64Array(lines).fill(32);
  const prices = new Float64Array(SAMPLES);
  return leastMs(10, () => {
    for (let sample = 0; sample < SAMPLES; sample += 1) {
      let [hours, labour] = [0, 0];
      for (let line = 0; line < lines; line += 1) {
        const worked = 0.1 + (times[sample * lines + line] ?? 0) * 1;
        hours += worked;
        labour += worked * (rates[line] ?? 0);
      }
      const cost = (2000 + labour + hours * 7.6) * 1.05 + 50;
      prices[sample] = Math.round((cost / 0.7) * 100) / 100;
    }
    if ((prices[0] ?? 0) <= 0) throw new Error('there is no price');
  });
}

export const benchmarks: readonly Benchmark[] = [
  {
    name: 'simulate a 200-line cost sheet 10,000 times',
    reference: 'the arithmetic of the same sheet alone, on times that stand ready',
    run: async () => ({ oursMs: simulationMs(sheetWithTimes()), referenceMs: arithmeticMs() }),
  },
];
