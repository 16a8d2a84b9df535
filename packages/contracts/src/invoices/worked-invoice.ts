import type { Figure, FigureTableBuilder } from '@scantling/figures';
import type { RowTotals, TaxedAmount } from '@scantling/quoting';
import { z } from 'zod';
import { figureId } from '../figures.ts';

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
      }),
    ),
  })
  .meta({ id: 'TaxedTotals' });

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
    taxes: totals.rows.map(({ key, tax, net, taxAmount, gross }) => ({
      category: tax.category,
      name: tax.name,
      rate: tax.rate,
      net: table.add(`${under}/${key}/net`, net),
      tax: table.add(`${under}/${key}/tax`, taxAmount),
      total: table.add(`${under}/${key}/total`, gross),
    })),
  };
}
