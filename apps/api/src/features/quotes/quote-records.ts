import type { QuoteAnswer, QuoteRevisionAnswer } from '@scantling/contracts';
import { FigureTableBuilder, input, sum } from '@scantling/figures';
import { type QuoteAct, stateAfter } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import {
  type QuoteRow,
  type RevisionRow,
  stateOf,
  toQuoteSummary,
  toRevision,
  toRevisionSummary,
  WHOLE_REVISION,
  WITH_SHORT_REVISIONS,
} from './quote-rows.ts';

type Access = Prisma.TransactionClient;

/** The currency a quote is in is that of its first draft. */
export async function currenciesOf(
  database: Access,
  quoteIds: readonly string[],
): Promise<Map<string, string>> {
  const rows = await database.$queryRaw<{ quoteId: string; currency: string }[]>`
    select "quoteId", "draft"->>'currency' as "currency" from "QuoteRevision"
    where "quoteId" = any(${[...quoteIds]}) and "series" = 0 and "revision" = 1`;
  return new Map(rows.map(({ quoteId, currency }) => [quoteId, currency]));
}

/** What original and accepted additions come to together, as figures. */
function contractOf(row: QuoteRow, summary: { currency: QuoteAnswer['currency'] }): QuoteAnswer['contract'] {
  const accepted = row.revisions.filter(({ state }) => state === 'accepted');
  if (accepted.length === 0) return null;
  const { currency } = summary;
  const parts = accepted.map((one) => ({
    one,
    figure: input({
      key: `accepted/${one.id}`,
      label: one.number ?? '',
      unit: 'money',
      value: one.total ?? '0',
      currency,
      source: { kind: 'entered', text: `accepted as ${one.number}`, record: `quote:${row.id}` },
    }),
  }));
  const table = new FigureTableBuilder({ withDerivations: true });
  const total = sum(
    'agreed in all, with tax',
    'money',
    parts.map(({ figure }) => figure),
    currency,
  );
  return {
    parts: parts.map(({ one, figure }) => ({
      revisionId: one.id,
      kind: one.kind === 'addition' ? 'addition' : 'quote',
      number: one.number ?? '',
      total: table.add('part', figure),
    })),
    total: table.add('total', total),
    figures: table.table(),
  };
}

/** @throws RequestProblem not-found */
export async function findQuote(database: Access, id: string, today: string): Promise<QuoteAnswer> {
  const row = await database.quote.findUnique({ where: { id }, include: WITH_SHORT_REVISIONS });
  if (row === null) throw notFound('quote');
  const currency = (await currenciesOf(database, [id])).get(id) ?? '';
  const summary = toQuoteSummary(row, currency, today);
  return {
    ...summary,
    revisions: row.revisions.map((one) => toRevisionSummary(one, row, today)),
    contract: contractOf(row, summary),
  };
}

/** @throws RequestProblem not-found */
export async function findRevisionRow(database: Access, id: string): Promise<RevisionRow> {
  const row = await database.quoteRevision.findUnique({ where: { id }, ...WHOLE_REVISION });
  if (row === null) throw notFound('revision of a quote');
  return row;
}

export async function findRevision(
  database: Access,
  id: string,
  today: string,
): Promise<QuoteRevisionAnswer> {
  return toRevision(await findRevisionRow(database, id), today);
}

/**
 * The revision, with its quote locked for the rest of the transaction, so that of two who act on it the second sees
 * what the first has done.
 * @throws RequestProblem not-found
 */
export async function lockRevision(transaction: Access, id: string): Promise<RevisionRow> {
  await transaction.$queryRaw`
    select "id" from "Quote" where "id" = (select "quoteId" from "QuoteRevision" where "id" = ${id}) for update`;
  return findRevisionRow(transaction, id);
}

/** @throws RequestProblem version-stale */
export function requireVersion(row: { version: number }, expected: number): void {
  if (row.version !== expected) throw new RequestProblem('version-stale');
}

/** @throws QuoteStateError where the revision's state on the day does not allow the act */
export function nextState(row: RevisionRow, act: QuoteAct, today: string) {
  return stateAfter(stateOf(row, today), act);
}

/** Changes a locked revision and brings what its quote says of it up to date. */
export async function changeRevision(
  transaction: Access,
  row: Pick<RevisionRow, 'id' | 'quoteId'>,
  data: Prisma.QuoteRevisionUncheckedUpdateInput,
): Promise<void> {
  await transaction.quoteRevision.update({
    where: { id: row.id },
    data: { ...data, version: { increment: 1 } },
  });
  await settleQuote(transaction, row.quoteId);
}

/** Keeps with the quote which revision it is at: the accepted one, else the newest one sent, else the newest. */
export async function settleQuote(transaction: Access, quoteId: string): Promise<void> {
  const own = await transaction.quoteRevision.findMany({
    where: { quoteId, series: 0 },
    orderBy: { revision: 'desc' },
    select: { id: true, state: true, validUntil: true },
  });
  const current =
    own.find(({ state }) => state === 'accepted') ??
    own.find(({ state }) => state !== 'draft' && state !== 'superseded') ??
    own[0];
  if (current === undefined) return;
  const { id: currentId, state, validUntil } = current;
  await transaction.quote.update({
    where: { id: quoteId },
    data: { currentId, state, validUntil, version: { increment: 1 } },
  });
}
