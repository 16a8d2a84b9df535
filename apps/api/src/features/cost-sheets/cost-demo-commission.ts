import { type CostColumn, costSheet, type SheetNotice } from '@scantling/costing';
import { roundHalfAway } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';
import { minorUnits } from '@scantling/money';
import type { StartJob } from '../../start-job.ts';
import { toCostSheet, WITH_NAMES } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

const LABEL_WIDTH = 34;
const AMOUNT_WIDTH = 12;

function amount(figure: Figure | null): string {
  if (figure === null) return '-'.padStart(AMOUNT_WIDTH);
  const places = figure.currency === null ? 1 : minorUnits(figure.currency);
  return roundHalfAway(figure.value, places).toFixed(places).padStart(AMOUNT_WIDTH);
}

function percent(figure: Figure<'ratio'> | null): string {
  return (figure === null ? '-' : `${roundHalfAway(figure.value.times(100), 1).toFixed(1)} %`).padStart(
    AMOUNT_WIDTH,
  );
}

function summary(columns: readonly CostColumn[]): string[] {
  const line = (label: string, cells: readonly string[]) => `  ${label.padEnd(LABEL_WIDTH)}${cells.join('')}`;
  const row = (label: string, pick: (column: CostColumn) => Figure | null) =>
    line(
      label,
      columns.map((column) => amount(pick(column))),
    );
  return [
    line(
      'pieces',
      columns.map((column) => String(column.quantity).padStart(AMOUNT_WIDTH)),
    ),
    row('prime cost', (column) => column.classes.primeCost),
    row('works cost', (column) => column.classes.worksCost),
    row('cost of production', (column) => column.classes.costOfProduction),
    row('price', (column) => column.price.netPrice),
    row('price of a piece', (column) => column.perPiece.price),
    line(
      'margin',
      columns.map((column) => percent(column.price.margin)),
    ),
    row("an hour of the owner's earns", (column) => column.price.hourlyEarnings),
    row('floor price (you earn 0 an hour)', (column) => column.price.floorPrice),
  ];
}

function incomplete(notices: readonly SheetNotice[]): string[] {
  const missing = notices.filter(({ kind }) => kind === 'no-price');
  return [
    '  Not complete: cost and price are too low.',
    ...missing.map(({ message, mend }) => `  ${message}: ${mend}`),
  ];
}

/** The main job, once at every start while the demo is there: its commission, costed and priced. */
export const costDemoCommission: StartJob = {
  name: 'cost-demo-commission',
  run: async ({ database }) => {
    const row = await database.costSheet.findFirst({
      where: { isDemo: true, basis: 'commission' },
      orderBy: { createdAt: 'asc' },
      include: WITH_NAMES,
    });
    if (row === null) return [];
    const asked = toCostSheet(row);
    const input = await gatherInput(database, asked, new Date().toISOString().slice(0, 10));
    const { columns, notices, isComplete } = costSheet(input);
    return [
      `${asked.title} (invented), prices of ${input.onDate}, in ${input.currency}:`,
      ...summary(columns),
      ...(isComplete ? [] : incomplete(notices)),
    ];
  },
};
