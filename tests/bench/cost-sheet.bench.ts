import { toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { HyperFormula } from 'hyperformula';
import type { Benchmark } from './benchmark.ts';
import { leastMs } from './least-ms.ts';
import { sheetCells } from './sheet-cells.ts';
import { workshopSheet } from './workshop-sheet.ts';

function costing(lines: number): number {
  const input = workshopSheet(lines);
  return leastMs(40, () => toWorkedCostSheet(costSheet(input), { withDerivations: true }));
}

export const benchmarks: readonly Benchmark[] = [
  {
    name: 'cost a 200-line design, figures included',
    reference: 'a spreadsheet engine rebuilding the same sheet',
    run: async () => {
      const cells = sheetCells(200);
      const referenceMs = leastMs(25, () =>
        HyperFormula.buildFromArray(cells, { licenseKey: 'gpl-v3' }).destroy(),
      );
      return { oursMs: costing(200), referenceMs };
    },
  },
  {
    name: 'cost growth from 200 to 2,000 lines',
    reference: 'ten times the 200-line design',
    run: async () => ({ oursMs: costing(2000), referenceMs: costing(200) * 10 }),
  },
];
