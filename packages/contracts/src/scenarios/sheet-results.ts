import { type Decimal, decimal } from '@scantling/decimals';
import type { TriedTable } from '@scantling/figures';
import { z } from 'zod';
import type { WorkedCostSheet } from '../cost-sheets/worked-cost-sheet.ts';
import { figureId } from '../figures.ts';

type Column = Pick<WorkedCostSheet['columns'][number], 'classes' | 'price' | 'perPiece' | 'hours'>;

/** What a cost sheet is looked at for, in the order people look. */
const RESULTS = {
  netPrice: ({ price }: Column) => price.netPrice,
  cost: ({ classes }: Column) => classes.costOfProduction,
  margin: ({ price }: Column) => price.margin,
  hourlyEarnings: ({ price }: Column) => price.hourlyEarnings,
  piecePrice: ({ perPiece }: Column) => perPiece.price,
  pieceCost: ({ perPiece }: Column) => perPiece.cost,
  workHours: ({ hours }: Column) => hours.work,
  ownerHours: ({ hours }: Column) => hours.owner,
  floorPrice: ({ price }: Column) => price.floorPrice,
} as const;

export type SheetResultName = keyof typeof RESULTS;
export const SHEET_RESULTS = Object.keys(RESULTS) as [SheetResultName, ...SheetResultName[]];

/** As worked out, with as many places as that takes. */
export const workedAmount = z.string().meta({ description: 'A decimal number as text', examples: ['12.5'] });

/** One result as it stands and as it would be. */
export const sheetResultSchema = z
  .strictObject({
    name: z.enum(SHEET_RESULTS),
    figure: figureId.meta({ description: 'Id of the figure as tried' }),
    was: workedAmount,
    now: workedAmount,
    difference: workedAmount,
    share: workedAmount.nullable().meta({ description: 'The difference as a share of what it was' }),
  })
  .meta({ id: 'SheetResult' });
export type SheetResult = z.output<typeof sheetResultSchema>;

/** As far as anybody reads a share of a difference. */
const PLACES = 6;

function shareOf(difference: Decimal, was: Decimal): string | null {
  return was.isZero() ? null : difference.div(was.abs()).toDecimalPlaces(PLACES).toFixed();
}

export function sheetResult(name: SheetResultName, figure: string, was: Decimal, now: Decimal): SheetResult {
  const difference = now.minus(was);
  return {
    name,
    figure,
    was: was.toFixed(),
    now: now.toFixed(),
    difference: difference.toFixed(),
    share: shareOf(difference, was),
  };
}

/** The results of one column that have a meaning (no margin of nothing), with the id of each. */
export function resultIds(column: Column): { name: SheetResultName; id: string }[] {
  return SHEET_RESULTS.flatMap((name) => {
    const id = RESULTS[name](column);
    return id === null ? [] : [{ name, id }];
  });
}

/** What a column's results come to with other values tried. */
export function triedResults(column: Column, { table, moved }: TriedTable): SheetResult[] {
  return resultIds(column).flatMap(({ name, id }) => {
    const node = table[id];
    if (node === undefined) return [];
    const now = decimal(node.value);
    return [sheetResult(name, id, moved.get(id) ?? now, now)];
  });
}
