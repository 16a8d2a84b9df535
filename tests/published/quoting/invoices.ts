import { clientDocumentSchema, exampleDocument, quoteTotals } from '@scantling/contracts';
import {
  type AgreedPart,
  documentTotals,
  type IssuedPaper,
  statedRows,
  statedTotals,
  type TaxRow,
  workOutCredit,
  workOutInvoice,
} from '@scantling/quoting';
import { z } from 'zod';
import type { Runner } from '../costing/runner.ts';

const wantedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('deposit'), partId: z.string() }),
  z.strictObject({ kind: z.literal('part'), amount: z.string() }),
  z.strictObject({ kind: z.literal('final') }),
]);
const inputsSchema = quoteTotals.body.extend({
  /** Issued one after the other. */
  invoices: z.array(wantedSchema).min(1),
  /** A credit note on the last of them: null for all of it, else with tax. */
  credit: z.string().nullable().optional(),
});

/** The published invoice as an accepted quote. */
function accepted(inputs: z.output<typeof inputsSchema>): AgreedPart {
  const { currency, priceMode, taxes, lines, discount, schedule } = inputs;
  const document = clientDocumentSchema.parse({
    ...exampleDocument,
    currency,
    priceMode,
    taxes,
    discount,
    schedule: schedule.map(({ id, label, share }) => ({ id, label, share, due: 'on-acceptance' })),
    lines: lines.map(({ id, label, quantity, price, priceBase = '1', tax, choice }) => ({
      id,
      kind: 'free',
      description: label,
      details: '',
      quantity,
      unit: '',
      price,
      priceBase,
      amount: '0',
      tax,
      choice,
      pictures: [],
    })),
  });
  return { id: 'published', document, chosen: [], totals: statedTotals(documentTotals(document, [])) };
}

const byRate = (rows: readonly TaxRow[], pick: (row: TaxRow) => string) =>
  Object.fromEntries(rows.map((row) => [row.name, pick(row)]));

/**
 * A published invoice -> what is agreed, what each paper asks for, what the last one leaves to pay, and what a credit
 * note on it gives back.
 */
export const invoicesRunner: Runner = (given) => {
  const inputs = inputsSchema.parse(given);
  const part = accepted(inputs);
  const { currency } = inputs;
  const before: IssuedPaper[] = [];
  for (const asked of inputs.invoices) {
    const wanted = asked.kind === 'deposit' ? { ...asked, revisionId: part.id } : asked;
    const { own } = workOutInvoice({ currency, parts: [part], before, wanted });
    const number = `paper ${before.length + 1}`;
    before.push({
      id: number,
      number,
      kind: wanted.kind,
      issuedOn: '2026-03-02',
      creditsId: null,
      scheduled: wanted.kind === 'deposit' ? wanted : null,
      taxes: statedRows(own.rows),
      total: own.total.value.toString(),
    });
  }
  const last = before.at(-1);
  const credit =
    inputs.credit === undefined || last === undefined
      ? undefined
      : workOutCredit({ currency, invoice: last, credits: [], amount: inputs.credit }).own;
  const { net, tax, total, taxes } = part.totals;
  return {
    taxable: Object.fromEntries(taxes.map((row) => [row.id, row.net])),
    taxes: Object.fromEntries(taxes.map((row) => [row.id, row.tax])),
    net,
    tax,
    total,
    papers: before.map((paper) => paper.total),
    payable: last?.total,
    ...(credit === undefined
      ? {}
      : {
          credit: {
            taxable: byRate(statedRows(credit.rows), (row) => row.net),
            taxes: byRate(statedRows(credit.rows), (row) => row.taxAmount),
            net: credit.net.value,
            tax: credit.tax.value,
            total: credit.total.value,
          },
        }),
  };
};
