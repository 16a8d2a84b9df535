import type { FigureTableBuilder } from '@scantling/figures';
import type { QuoteTotals } from '@scantling/quoting';
import { z } from 'zod';
import { figureId } from '../figures.ts';
import { partId } from './quote-terms.ts';

/** What a quote comes to; everything that is a number is the id of a figure in `figures` beside it. */
export const workedQuoteTotalsSchema = z
  .strictObject({
    lines: z.array(
      z.strictObject({
        id: partId,
        /** Whether it counts with what is chosen; the amount of the others is what they would cost. */
        isCounted: z.boolean(),
        price: figureId,
        amount: figureId,
      }),
    ),
    sumOfLines: figureId,
    discount: figureId,
    taxes: z.array(
      z.strictObject({
        id: partId,
        lines: figureId,
        discount: figureId,
        net: figureId,
        tax: figureId,
        gross: figureId,
        /** Inclusive prices only: tax less what the net rule of EN 16931 gives; within one minor unit. */
        differenceFromNetRule: figureId.nullable(),
      }),
    ),
    net: figureId,
    tax: figureId,
    /** With tax. */
    total: figureId,
    schedule: z.array(z.strictObject({ id: partId, amount: figureId })),
  })
  .meta({ id: 'QuoteTotals' });
export type WorkedQuoteTotals = z.output<typeof workedQuoteTotalsSchema>;

/** Puts the totals' figures into the table and answers their ids; the web's live totals use it too. */
export function toWorkedQuoteTotals(totals: QuoteTotals, table: FigureTableBuilder): WorkedQuoteTotals {
  return {
    lines: totals.lines.map(({ line, isCounted, price, amount }) => ({
      id: line.id,
      isCounted,
      price: table.add(`line/${line.id}/unit-price`, price),
      amount: table.add(`line/${line.id}/amount`, amount),
    })),
    sumOfLines: table.add('sum-of-lines', totals.sumOfLines),
    discount: table.add('discount', totals.discount),
    taxes: totals.categories.map((one) => {
      const add = (name: string, figure: typeof one.net) => table.add(`tax/${one.tax.id}/${name}`, figure);
      return {
        id: one.tax.id,
        lines: add('lines', one.lines),
        discount: add('discount', one.discount),
        net: add('net', one.net),
        tax: add('tax', one.taxAmount),
        gross: add('gross', one.gross),
        differenceFromNetRule:
          one.differenceFromNetRule === null
            ? null
            : add('difference-from-net-rule', one.differenceFromNetRule),
      };
    }),
    net: table.add('net', totals.net),
    tax: table.add('tax', totals.tax),
    total: table.add('total', totals.total),
    schedule: totals.schedule.map(({ part, amount }) => ({
      id: part.id,
      amount: table.add(`schedule/${part.id}/amount`, amount),
    })),
  };
}
