import { clientDocumentSchema, quoteDraftSchema } from '@scantling/contracts';
import { type ClientDocument, clientDocument } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { nextNumber } from '../../numbers/next-number.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { daysAfter, documentWorkshop } from './client-facts.ts';
import { freezeWorking } from './frozen-working.ts';
import { dayOf, type RevisionRow, titleOf } from './quote-rows.ts';
import { requirePriced } from './unpriced-lines.ts';
import { workDraft } from './work-draft.ts';

type Access = Prisma.TransactionClient;

/** The number its series of revisions has been given already; null before the first sending. */
async function givenNumber(database: Access, { quoteId, series }: RevisionRow): Promise<string | null> {
  const before = await database.quoteRevision.findFirst({
    where: { quoteId, series, number: { not: null } },
    select: { number: true },
  });
  return before?.number ?? null;
}

/** The number of a series of revisions: given at its first sending, and the same for all that follow. */
async function numberOf(transaction: Access, row: RevisionRow, year: number): Promise<string> {
  const given = await givenNumber(transaction, row);
  if (given !== null) return given;
  const { quoteId, series, quote } = row;
  if (series === 0)
    return (await nextNumber(transaction, { series: 'quote', year, isDemo: quote.isDemo })).number;
  const sent = await transaction.quoteRevision.findMany({
    where: { quoteId, series: { gt: 0 }, number: { not: null } },
    distinct: ['series'],
    select: { series: true },
  });
  return `${quote.number}-A${sent.length + 1}`;
}

/** The accepted offer that an addition comes on top of; null for the quote itself. */
async function addsTo(database: Access, row: RevisionRow): Promise<ClientDocument['addsTo']> {
  if (row.series === 0) return null;
  const original = await database.quoteRevision.findFirstOrThrow({
    where: { quoteId: row.quoteId, series: 0, state: 'accepted' },
    select: { number: true, acceptance: true },
  });
  const acceptedAt: unknown = Reflect.get(Object(original.acceptance), 'acceptedAt');
  return { number: original.number ?? '', acceptedOn: String(acceptedAt).slice(0, 10) };
}

/** Everything but the number, worked out as of a day. @throws QuotingInputError, RequestProblem input-invalid */
async function unnumbered(database: Access, row: RevisionRow, now: Date) {
  const today = dayOf(now);
  const draft = quoteDraftSchema.parse(row.draft);
  if (draft.lines.length === 0)
    throw fieldProblem('draft.lines', 'are none', 'Enter at least one line before you send it.');
  const worked = await workDraft(new CostingRecords(database, today), draft);
  requirePriced(draft, worked.costed);
  const workshop = await readWorkshop(database);
  const original = await addsTo(database, row);
  const { client } = row.quote;
  const numbered = (number: string): ClientDocument =>
    clientDocument(draft, worked.totals, {
      kind: row.series === 0 ? 'quote' : 'addition',
      number,
      revision: row.revision,
      title: titleOf(row, row.quote),
      sentOn: today,
      validUntil: daysAfter(today, draft.validDays),
      workshop: documentWorkshop(workshop),
      client: { name: client.name, addressLines: client.addressLines },
      addsTo: original,
    });
  return { numbered, working: freezeWorking(draft, worked) };
}

/**
 * The document as it will be frozen, numbered last, since others who want a number wait from then on.
 * @throws QuotingInputError naming a field of the draft, RequestProblem input-invalid without lines
 */
export async function writeDocument(transaction: Access, row: RevisionRow, now: Date) {
  const { numbered, working } = await unnumbered(transaction, row, now);
  const number = await numberOf(transaction, row, now.getUTCFullYear());
  return { document: numbered(number), working };
}

/** The document as sending would freeze it now, with an empty number where none is given yet; what was sent as it was. */
export async function previewDocument(
  database: Access,
  row: RevisionRow,
  now: Date,
): Promise<ClientDocument> {
  if (row.document !== null) return clientDocumentSchema.parse(row.document);
  const { numbered } = await unnumbered(database, row, now);
  return numbered((await givenNumber(database, row)) ?? '');
}
