import { toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { Recalculation, tryValues } from '@scantling/figures';
import { HyperFormula } from 'hyperformula';
import type { Benchmark } from './benchmark.ts';
import { leastMs } from './least-ms.ts';
import { SHARED, sheetCells } from './sheet-cells.ts';
import { workshopSheet } from './workshop-sheet.ts';

const LINES = 200;

/** Eight leaves that many lines share, each a little up and down in turn. */
const CHANGES = [1.01, 0.99].map((by) => ({
  'allowance/rough-lumber/length': String(25 * by),
  'allowance/rough-lumber/width': String(6 * by),
  'labour/g0/pay-per-hour': String(18 * by),
  'labour/g1/pay-per-hour': String(24 * by),
  'labour/g2/pay-per-hour': String(30 * by),
  'terms/freight': String(50 * by),
  'terms/contingency': String(0.05 * by),
  'terms/policy/margin': String(0.3 * by),
}));

function changeMs(): number {
  const { figures } = toWorkedCostSheet(costSheet(workshopSheet(LINES)), { withDerivations: true });
  const sheet = new Recalculation(figures);
  let turn = 0;
  return leastMs(40, () => {
    turn += 1;
    const { changed } = sheet.change(CHANGES[turn % 2] ?? {});
    if (!changed.has('pieces-1/price/list')) throw new Error('the price did not move');
  });
}

/** The same sheet in a spreadsheet engine, with the shared values in cells of their own. */
function spreadsheetMs(): number {
  const names = Object.keys(SHARED) as (keyof typeof SHARED)[];
  const at = (place: number) => `$Z$${place + 1}`;
  const cells = sheetCells(
    LINES,
    Object.fromEntries(names.map((name, place) => [name, at(place)])) as Record<keyof typeof SHARED, string>,
  );
  names.forEach((name, place) => {
    const row = cells[place] ?? [];
    row.push(...Array.from({ length: 25 - row.length }, () => ''), SHARED[name]);
  });
  const engine = HyperFormula.buildFromArray(cells, { licenseKey: 'gpl-v3' });
  let turn = 0;
  const found = leastMs(40, () => {
    turn += 1;
    const by = turn % 2 === 0 ? 1.01 : 0.99;
    engine.batch(() => {
      names.forEach((name, row) => {
        engine.setCellContents({ sheet: 0, row, col: 25 }, SHARED[name] * by);
      });
    });
  });
  engine.destroy();
  return found;
}

const A_TENTH_OF_A_SECOND = 100;

/** What happens on the screen between a key and the figures, but for drawing them. */
function tryMs(): number {
  const { figures } = toWorkedCostSheet(costSheet(workshopSheet(LINES)), { withDerivations: true });
  let pay = 40;
  return leastMs(40, () => {
    pay += 1;
    const { moved } = tryValues(figures, { 'labour/g2/pay-per-hour': pay });
    if (!moved.has('pieces-1/price/list')) throw new Error('the price did not move');
  });
}

export const benchmarks: readonly Benchmark[] = [
  {
    name: 'change 8 shared values of a 200-line cost sheet',
    reference: "a spreadsheet engine's incremental change of the same values",
    run: async () => ({ oursMs: changeMs(), referenceMs: spreadsheetMs() }),
  },
  {
    name: 'try one value on a 200-line cost sheet, all figures written anew',
    reference: 'a tenth of a second, in which an answer seems at once',
    largestRatio: 1,
    run: async () => ({ oursMs: tryMs(), referenceMs: A_TENTH_OF_A_SECOND }),
  },
];
