import { isCurrency, minorUnits } from '@scantling/money';
import type { FigureNode } from '../table.ts';
import type { WorkingSheet } from './working-sheet.ts';

/**
 * Rows that share an amount out by weights, largest remainders first, with columns of cells where one formula would
 * grow with the square of the weights.
 * @param inputs the amount, then its weights, as formulas write them
 * @returns the formula of each weight's share
 */
export function allocationRows(
  working: WorkingSheet,
  node: Pick<FigureNode, 'label'>,
  inputs: readonly string[],
  currency: string,
): string[] {
  const [total = '0', ...weights] = inputs;
  const scale = `10^${isCurrency(currency) ? minorUnits(currency) : 2}`;
  const add = (what: string, formula: string) =>
    working.add({ label: `${node.label}: ${what}`, unit: 'ratio', currency: null, formula, words: '' });
  const column = (what: string, formula: (at: number) => string) => {
    const cells = weights.map((_, at) => add(`${what} ${at + 1} of ${weights.length}`, formula(at)));
    return { cells, range: `${cells[0] ?? ''}:${cells.at(-1) ?? ''}` };
  };
  const weight = column('weight', (at) => weights[at] ?? '0');
  // ROUND guards the binary spreadsheet: a third of 0.30 is 10 cents there too, not 9.9999999.
  const exact = column(
    'exact share in the smallest coin,',
    (at) => `ROUND(ABS(${total})*${scale}*${weight.cells[at]}/SUM(${weight.range}),9)`,
  );
  const whole = column('whole coins,', (at) => `INT(${exact.cells[at]})`);
  const rest = column('rest of a coin,', (at) => `ROUND(${exact.cells[at]}-${whole.cells[at]},9)`);
  const left = add('coins left over', `ROUND(ABS(${total})*${scale}-SUM(${whole.range}),0)`);
  return weights.map((_, at) => {
    const own = rest.cells[at] ?? '';
    const greater = `COUNTIF(${rest.range},">"&${own})`;
    const before = at === 0 ? '0' : `COUNTIF(${rest.cells[0]}:${rest.cells[at - 1]},${own})`;
    return `SIGN(${total})*(${whole.cells[at]}+IF(${greater}+${before}<${left},1,0))/${scale}`;
  });
}
