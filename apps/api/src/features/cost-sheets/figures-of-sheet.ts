import { toWorkedCostSheet, type WorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { findCostSheet } from './cost-sheet-records.ts';
import { gatherInput } from './gather-input.ts';

type Column = WorkedCostSheet['columns'][number];

/**
 * A stored cost sheet at one of its numbers of pieces, as a table with every derivation.
 * @throws RequestProblem not-found, or input-invalid where it is not worked out for that number
 */
export async function figuresOfSheet(
  { database, clock }: Services,
  id: string,
  quantity: number,
): Promise<{ figures: WorkedCostSheet['figures']; column: Column }> {
  const sheet = await findCostSheet(database, id);
  if (sheet === null) throw notFound('cost sheet');
  if (!sheet.quantities.includes(quantity))
    throw fieldProblem(
      'quantity',
      `is not among those of the sheet`,
      `Ask for one of ${sheet.quantities.join(', ')}.`,
    );
  const input = await gatherInput(
    database,
    { ...sheet, quantities: [quantity] },
    clock().toISOString().slice(0, 10),
  );
  const { figures, columns } = toWorkedCostSheet(costSheet(input), { withDerivations: true });
  const [column] = columns;
  if (column === undefined) throw new RangeError('a cost sheet has a column for its number of pieces');
  return { figures, column };
}

/** The id of a result: as the sheet's answer gives it, or by its name in the column ("price/netPrice"). */
export function resultId(
  { figures, column }: { figures: WorkedCostSheet['figures']; column: Column },
  name: string,
): string {
  if (Object.hasOwn(figures, name)) return name;
  const { price, classes, perPiece, hours } = column;
  const [group = '', key = ''] = name.split('/');
  const groups: Readonly<Record<string, Readonly<Record<string, string | null>>>> = {
    price,
    classes,
    perPiece,
    hours,
  };
  const found = Object.hasOwn(groups, group) ? groups[group]?.[key] : undefined;
  if (typeof found === 'string') return found;
  throw fieldProblem(
    'result',
    'names no figure of the cost sheet',
    'Name one as the sheet\'s answer does, such as "price/netPrice".',
  );
}
