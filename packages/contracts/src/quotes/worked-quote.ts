import type { Figure, FigureTableBuilder } from '@scantling/figures';
import { FigureTableBuilder as Builder } from '@scantling/figures';
import type { QuoteMargin, QuoteTotals } from '@scantling/quoting';
import { z } from 'zod';
import type { WorkingOptions } from '../calculations/calculation.ts';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { partId } from './quote-terms.ts';
import { toWorkedQuoteTotals, workedQuoteTotalsSchema } from './worked-quote-totals.ts';

/** What a quote leaves us; everything that is a number is the id of a figure. */
export const workedMarginSchema = z
  .strictObject({
    lines: z.array(
      z.strictObject({
        id: partId,
        /** Before the document's discount. */
        net: figureId,
        cost: figureId.nullable(),
        margin: figureId.nullable(),
      }),
    ),
    cost: figureId,
    profit: figureId,
    /** Share of the net total; null where that is nothing. */
    margin: figureId.nullable(),
    /** What an hour of the owner brings; null where no line has hours of the owner. */
    hourlyEarnings: figureId.nullable().default(null),
    /** Lines that count whose cost nobody has said: the margin takes it as nothing. */
    linesWithoutCost: z.array(partId),
    /** What must be bought for the lines that count. */
    bought: figureId,
    deposit: figureId,
    depositWithoutTax: figureId,
    /** The deposit, without its tax, does not pay for what must be bought. */
    isDepositShort: z.boolean(),
  })
  .meta({ id: 'QuoteMargin' });
export type WorkedMargin = z.output<typeof workedMarginSchema>;

export function toWorkedMargin(margin: QuoteMargin, table: FigureTableBuilder, under = ''): WorkedMargin {
  const add = (name: string, figure: Figure) => table.add(`${under}margin/${name}`, figure);
  const maybe = (name: string, figure: Figure | null) => (figure === null ? null : add(name, figure));
  return {
    lines: margin.lines.map((line) => ({
      id: line.id,
      net: add(`${line.id}/net`, line.net),
      cost: maybe(`${line.id}/cost`, line.cost),
      margin: maybe(`${line.id}/share`, line.margin),
    })),
    cost: add('cost', margin.cost),
    profit: add('profit', margin.profit),
    margin: maybe('share', margin.margin),
    hourlyEarnings: maybe('hourly-earnings', margin.hourlyEarnings),
    linesWithoutCost: [...margin.linesWithoutCost],
    bought: add('bought', margin.bought),
    deposit: add('deposit', margin.deposit),
    depositWithoutTax: add('deposit-without-tax', margin.depositWithoutTax),
    isDepositShort: margin.isDepositShort,
  };
}

/** A line whose cost sheet leaves out what nothing prices: its price is too low, and the quote cannot be sent. */
const unpricedLineSchema = z
  .strictObject({
    lineId: partId,
    costSheetId: z.string(),
    title: z.string(),
    materials: z.array(z.strictObject({ code: z.string(), name: z.string(), why: z.string() })),
  })
  .meta({ id: 'UnpricedQuoteLine' });
type UnpricedQuoteLine = z.output<typeof unpricedLineSchema>;

/** A quote worked out for us: what it comes to, and what it leaves. */
export const workedQuoteSchema = z
  .strictObject({
    /** True once sent: as it was then, never worked out again. */
    isFrozen: z.boolean(),
    currency: currencySchema,
    totals: workedQuoteTotalsSchema,
    margin: workedMarginSchema,
    /** None once sent: sending refuses them. */
    unpriced: z.array(unpricedLineSchema).default([]),
    figures: figureTableSchema,
  })
  .meta({ id: 'WorkedQuote' });
export type WorkedQuote = z.output<typeof workedQuoteSchema>;

export function toWorkedQuote(
  totals: QuoteTotals,
  margin: QuoteMargin,
  about: {
    isFrozen: boolean;
    currency: WorkedQuote['currency'];
    unpriced?: readonly UnpricedQuoteLine[];
  },
  options: WorkingOptions,
): WorkedQuote {
  const table = new Builder(options);
  const worked = {
    totals: toWorkedQuoteTotals(totals, table),
    margin: toWorkedMargin(margin, table),
  };
  return { ...about, unpriced: [...(about.unpriced ?? [])], ...worked, figures: table.table() };
}
