import type { Figure, FigureTableBuilder } from '@scantling/figures';
import { checkNetRule, type RowTotals, type TaxedAmount } from '@scantling/quoting';
import { z } from 'zod';
import { figureId, figureTableSchema } from '../figures.ts';

const rowTotals = { net: figureId, tax: figureId, total: figureId };
export const rowTotalsSchema = z.strictObject(rowTotals);

/** Sums of an invoice or credit note with their tax, as figures. */
export const taxedTotalsSchema = z
  .strictObject({
    ...rowTotals,
    taxes: z.array(
      z.strictObject({
        category: z.string(),
        name: z.string(),
        rate: z.string(),
        net: figureId,
        tax: figureId,
        total: figureId,
        /** Net x rate, rounded to the minor unit: BR-CO-17 of EN 16931. Null on papers issued without it. */
        byNetRule: figureId.nullable().default(null),
        /** The tax less that; 0 where the rule holds. */
        differenceFromNetRule: figureId.nullable().default(null),
      }),
    ),
  })
  .meta({ id: 'TaxedTotals' });

/** How an issued paper was worked out, with figures of its own: frozen when it was issued. */
export const issuedWorkingSchema = z
  .strictObject({
    /** The contract, original and additions; of a credit note the invoice it takes back from. */
    whole: rowTotalsSchema,
    /** Of it, invoiced or credited before. */
    before: rowTotalsSchema,
    left: rowTotalsSchema,
    own: taxedTotalsSchema,
    figures: figureTableSchema,
  })
  .meta({ id: 'IssuedWorking' });

const frozen = { left: rowTotalsSchema, own: taxedTotalsSchema, figures: figureTableSchema };
/** What is kept of an invoice's working, as it is written when it is issued. */
export const frozenInvoiceSchema = z.strictObject({
  contract: taxedTotalsSchema,
  invoicedBefore: rowTotalsSchema,
  ...frozen,
});
/** The same of a credit note. */
export const frozenCreditSchema = z.strictObject({
  invoiced: rowTotalsSchema,
  creditedBefore: rowTotalsSchema,
  ...frozen,
});

export function toRowTotals(
  under: string,
  { net, tax, total }: RowTotals,
  table: FigureTableBuilder,
): z.output<typeof rowTotalsSchema> {
  const add = (name: string, figure: Figure) => table.add(`${under}/${name}`, figure);
  return { net: add('net', net), tax: add('tax', tax), total: add('total', total) };
}

export function toTaxedTotals(
  under: string,
  totals: RowTotals & { readonly rows: readonly TaxedAmount[] },
  table: FigureTableBuilder,
): z.output<typeof taxedTotalsSchema> {
  return {
    ...toRowTotals(under, totals, table),
    taxes: totals.rows.map((row) => {
      const { category, name, rate } = row.tax;
      const add = (what: string, figure: Figure) => table.add(`${under}/${row.key}/${what}`, figure);
      const { byNetRule, differenceFromNetRule } = checkNetRule(row);
      return {
        category,
        name,
        rate,
        net: add('net', row.net),
        tax: add('tax', row.taxAmount),
        total: add('total', row.gross),
        byNetRule: add('by-net-rule', byNetRule),
        differenceFromNetRule: add('off-net-rule', differenceFromNetRule),
      };
    }),
  };
}
