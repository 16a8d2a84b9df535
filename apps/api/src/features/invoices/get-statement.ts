import { getStatement, type statementSchema } from '@scantling/contracts';
import { difference, entered, type Figure, FigureTableBuilder, input, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { statement } from '@scantling/quoting';
import type { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { agreedParts, BILLED_QUOTE, type BilledQuote } from './billing-records.ts';
import { addBalance, INVOICE_SUMMARY, type InvoiceRow, toAccount, toInvoiceSummary } from './invoice-rows.ts';

type Stated = z.output<typeof statementSchema>;
type Agreed = { quote: BilledQuote; part: ReturnType<typeof agreedParts>[number] };

function scheduleOf(agreed: readonly Agreed[], rows: readonly InvoiceRow[]): Stated['schedule'] {
  return agreed.flatMap(({ quote, part }) =>
    part.document.schedule.map(({ id, label, share }) => ({
      quoteId: quote.id,
      revisionId: part.id,
      partId: id,
      number: part.document.number,
      label,
      share,
      amount: part.totals.schedule.find((one) => one.id === id)?.amount ?? '0',
      invoiceId:
        rows.find((row) => row.revisionId === part.id && row.partId === id && row.credited.lt(row.total))
          ?.id ?? null,
    })),
  );
}

function stateOne(
  currency: Currency,
  agreed: readonly Agreed[],
  rows: readonly InvoiceRow[],
  { today, table }: { today: string; table: FigureTableBuilder },
): Stated {
  const invoices = rows.filter(({ kind }) => kind !== 'credit-note');
  const worked = statement(invoices.map(toAccount), currency, today);
  const contract = sum(
    'agreed in all, with tax',
    'money',
    agreed.map(({ part }) =>
      input({
        key: `accepted/${part.id}`,
        label: part.document.number,
        unit: 'money',
        value: part.totals.total,
        currency,
        source: entered(`accepted as ${part.document.number}`),
      }),
    ),
    currency,
  );
  const billed = difference('invoiced less credited', worked.invoiced, worked.credited);
  const add = (name: string, figure: Figure) => table.add(`${currency}/${name}`, figure);
  return {
    currency,
    contract: add('contract', contract),
    ...addBalance(table, currency, worked),
    overdue: add('overdue', worked.overdue),
    leftToInvoice: add('left', difference('left to invoice', contract, billed)),
    invoices: worked.accounts.flatMap(({ account, balance, daysOverdue }) =>
      invoices
        .filter(({ id }) => id === account.id)
        .map((row) => ({
          invoice: toInvoiceSummary(row, today),
          balance: addBalance(table, `invoice-${row.id}`, balance),
          daysOverdue,
        })),
    ),
    creditNotes: rows.filter(({ kind }) => kind === 'credit-note').map((row) => toInvoiceSummary(row, today)),
    schedule: scheduleOf(agreed, rows),
  };
}

type Whom = Pick<z.output<typeof getStatement.answer>, 'client' | 'quote'>;

/** Whom it is about. @throws RequestProblem not-found */
async function findWhom(
  database: Prisma.TransactionClient,
  { quoteId, clientId = '' }: z.output<typeof getStatement.query>,
  quotes: readonly BilledQuote[],
): Promise<Whom> {
  const [quote] = quotes;
  if (quoteId !== undefined) {
    if (quote === undefined) throw notFound('quote');
    const { client, number, title } = quote;
    return { client: { id: client.id, name: client.name }, quote: { number, title } };
  }
  const client = await database.client.findUnique({
    where: { id: clientId },
    select: { id: true, name: true },
  });
  if (client === null) throw notFound('client');
  return { client, quote: null };
}

export const answerGetStatement = handle(getStatement, async ({ query, services }) => {
  const { quoteId, clientId } = query;
  if ((quoteId === undefined) === (clientId === undefined))
    throw fieldProblem('query.quoteId', 'or clientId is wanted', 'Name one quote or one client.');
  const today = dayOf(services.clock());
  const whose = quoteId === undefined ? { clientId: clientId ?? '' } : { id: quoteId };
  const [quotes, rows] = await Promise.all([
    services.database.quote.findMany({ where: whose, include: BILLED_QUOTE, orderBy: { id: 'asc' } }),
    services.database.invoice.findMany({
      where: { quote: whose },
      include: INVOICE_SUMMARY,
      orderBy: { id: 'asc' },
    }),
  ]);
  const whom = await findWhom(services.database, query, quotes);
  const agreed = quotes.flatMap((quote) => agreedParts(quote).map((part) => ({ quote, part })));
  const currencies = [...new Set(agreed.map(({ part }) => part.document.currency))];
  const table = new FigureTableBuilder({ withDerivations: true });
  const statements = currencies.map((currency) =>
    stateOne(
      currency,
      agreed.filter(({ part }) => part.document.currency === currency),
      rows.filter((row) => row.currency === currency),
      { today, table },
    ),
  );
  return { asOf: today, ...whom, statements, figures: table.table() };
});
