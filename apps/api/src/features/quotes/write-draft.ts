import type { BodyOf, createQuote, editQuoteDraft } from '@scantling/contracts';
import { type DraftLine, type QuoteDraft, QuoteStateError } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { asJson, checkDraft } from './check-draft.ts';
import { changeRevision, lockRevision, nextState, requireVersion, settleQuote } from './quote-records.ts';
import type { RevisionRow } from './quote-rows.ts';
import { startAddition, startDraft } from './start-draft.ts';

type Access = Prisma.TransactionClient;
type By = { createdBy: string; isDemo?: boolean };

/** The draft with a line for so many pieces of a cost sheet, named after its design. */
async function withSheetLine(
  transaction: Access,
  draft: QuoteDraft,
  { id, pieces }: NonNullable<BodyOf<typeof createQuote>['costSheet']>,
): Promise<QuoteDraft> {
  const sheet = await transaction.costSheet.findUnique({
    where: { id },
    select: { design: { select: { name: true } } },
  });
  const tax = draft.taxes[0]?.id;
  if (sheet === null || tax === undefined)
    throw fieldProblem('costSheet.id', 'names no cost sheet', 'Choose one of the cost sheets.');
  const line: DraftLine = {
    kind: 'cost-sheet',
    id: `line-${draft.lines.length + 1}`,
    description: sheet.design.name.slice(0, 200),
    details: '',
    tax,
    choice: { kind: 'included' },
    pictures: [],
    costSheetId: id,
    pieces,
  };
  return { ...draft, lines: [...draft.lines, line] };
}

/** Begins a quote with its first draft. @returns its id @throws RequestProblem input-invalid, not-found */
export async function addQuote(
  transaction: Access,
  given: BodyOf<typeof createQuote>,
  { createdBy, isDemo = false }: By,
): Promise<string> {
  const started = given.draft ?? startDraft(await readWorkshop(transaction));
  const draft = given.costSheet ? await withSheetLine(transaction, started, given.costSheet) : started;
  await checkDraft(transaction, { ...given, draft });
  const { title, clientId, enquiryId } = given;
  const { id } = await transaction.quote.create({ data: { title, clientId, enquiryId, isDemo } });
  await transaction.quoteRevision.create({
    data: { quoteId: id, kind: 'quote', series: 0, revision: 1, draft: asJson(draft), createdBy },
  });
  await settleQuote(transaction, id);
  return id;
}

/** @throws QuoteStateError once it is sent; RequestProblem version-stale, input-invalid */
export async function changeDraft(
  transaction: Access,
  where: { id: string; version: number; today: string },
  given: BodyOf<typeof editQuoteDraft>,
): Promise<void> {
  const row = await lockRevision(transaction, where.id);
  requireVersion(row, where.version);
  nextState(row, 'edit', where.today);
  await checkDraft(transaction, given);
  const { title, clientId, enquiryId, draft } = given;
  if (clientId !== row.quote.clientId && row.quote.number !== null)
    throw fieldProblem(
      'clientId',
      'cannot change: the client has been sent this quote',
      'Begin a quote of its own for another client.',
    );
  const isAddition = row.kind === 'addition';
  const ofQuote = isAddition ? { clientId, enquiryId } : { title, clientId, enquiryId };
  await transaction.quote.update({ where: { id: row.quoteId }, data: ofQuote });
  await changeRevision(transaction, row, { draft: asJson(draft), ...(isAddition ? { title } : {}) });
}

/** Removes a draft; a quote of which nothing is left goes along. @throws QuoteStateError, RequestProblem version-stale */
export async function dropDraft(
  transaction: Access,
  where: { id: string; version: number; today: string },
): Promise<void> {
  const row = await lockRevision(transaction, where.id);
  requireVersion(row, where.version);
  nextState(row, 'remove', where.today);
  await transaction.quoteRevision.delete({ where: { id: row.id } });
  const left = await transaction.quoteRevision.count({ where: { quoteId: row.quoteId } });
  if (left === 0) await transaction.quote.delete({ where: { id: row.quoteId } });
  else await settleQuote(transaction, row.quoteId);
}

function waitingDraft(transaction: Access, row: Pick<RevisionRow, 'quoteId' | 'series'>) {
  const { quoteId, series } = row;
  return transaction.quoteRevision.findFirst({
    where: { quoteId, series, state: 'draft' },
    select: { id: true },
  });
}

/** A new draft that starts as the revision was; the one that waits already where there is one. @returns its id */
export async function addRevision(
  transaction: Access,
  where: { id: string; today: string },
  { createdBy }: By,
): Promise<string> {
  const row = await lockRevision(transaction, where.id);
  nextState(row, 'revise', where.today);
  const { quoteId, kind, series } = row;
  const title = kind === 'addition' ? row.title : null;
  const accepted = await transaction.quoteRevision.count({ where: { quoteId, series, state: 'accepted' } });
  if (accepted > 0) throw new QuoteStateError('accepted', 'revise');
  const waiting = await waitingDraft(transaction, row);
  if (waiting !== null) return waiting.id;
  const newest = await transaction.quoteRevision.aggregate({
    where: { quoteId, series },
    _max: { revision: true },
  });
  const revision = (newest._max.revision ?? 0) + 1;
  const { id } = await transaction.quoteRevision.create({
    data: { quoteId, kind, series, revision, title, draft: asJson(row.draft), createdBy },
  });
  await settleQuote(transaction, quoteId);
  return id;
}

/** A draft on top of what was accepted. @returns its id @throws QuoteStateError before anything is accepted */
export async function addAddition(
  transaction: Access,
  where: { quoteId: string; today: string },
  given: { title?: string | undefined; draft?: QuoteDraft | undefined },
  { createdBy }: By,
): Promise<string> {
  const { quoteId } = where;
  const quote = await transaction.quote.findUnique({
    where: { id: quoteId },
    select: { currentId: true, title: true },
  });
  if (quote?.currentId == null) throw notFound('quote');
  const current = await lockRevision(transaction, quote.currentId);
  nextState(current, 'add', where.today);
  const original = JSON.parse(JSON.stringify(current.draft)) as QuoteDraft;
  const draft = given.draft ?? startAddition(original);
  await checkDraft(transaction, { draft });
  if (draft.currency !== original.currency)
    throw fieldProblem(
      'draft.currency',
      `is not the currency of the quote`,
      `Price the addition in ${original.currency}.`,
    );
  const last = await transaction.quoteRevision.aggregate({ where: { quoteId }, _max: { series: true } });
  const series = (last._max.series ?? 0) + 1;
  const title = given.title ?? `Addition to ${quote.title}`.slice(0, 200);
  const { id } = await transaction.quoteRevision.create({
    data: { quoteId, kind: 'addition', series, revision: 1, title, draft: asJson(draft), createdBy },
  });
  await settleQuote(transaction, quoteId);
  return id;
}
