import { performance } from 'node:perf_hooks';
import { toWorkedCostSheet } from '@scantling/contracts';
import { costSheet, requireSized } from '@scantling/costing';
import { HyperFormula } from 'hyperformula';
import type { Benchmark } from './benchmark.ts';
import { workshopSheet } from './workshop-sheet.ts';

/** The least of several runs: what the work takes when nothing else is in the way. */
function leastMs(runs: number, work: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

/**
 * The same sheet as cells: one row a part (sizes, rough face, need, price, cost), one row an operation (hours, rate,
 * cost), the totals and the price below.
 */
function sheetCells(lines: number): (string | number)[][] {
  const drawn = { bill: workshopSheet(lines).bill, parameters: [], variants: [] };
  const { bill } = requireSized(drawn, {}, 'mm');
  const rows: (string | number)[][] = [];
  bill.parts.forEach((part, index) => {
    const row = index + 1;
    rows.push([
      part.quantity,
      Number(part.length),
      Number(part.width),
      `=B${row}+25`,
      `=C${row}+6`,
      `=D${row}*E${row}/1000000`,
      `=F${row}*A${row}`,
      `=G${row}*10.7639104167*MAX(1,25.4/25.4)`,
      `=H${row}/0.7`,
      `=IF(I${row}>=200,5.4,6)`,
      `=I${row}*J${row}`,
    ]);
  });
  bill.operations.forEach((operation) => {
    const row = rows.length + 1;
    rows.push([
      Number(operation.setupHours),
      Number(operation.runHours),
      `=A${row}+B${row}*1`,
      32,
      '',
      '',
      '',
      '',
      '',
      '',
      `=C${row}*D${row}`,
    ]);
  });
  const last = rows.length;
  const parts = bill.parts.length;
  rows.push([
    `=SUM(K1:K${last})`,
    `=SUM(C${parts + 1}:C${last})*7.6`,
    `=A${last + 1}+B${last + 1}`,
    `=C${last + 1}*1.05+50`,
    `=ROUND(D${last + 1}/0.7,2)`,
  ]);
  return rows;
}

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
