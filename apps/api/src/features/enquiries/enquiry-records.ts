import type { BodyOf, createEnquiry, EnquiryRecord, FieldProblem } from '@scantling/contracts';
import { sumOf } from '@scantling/decimals';
import { isCurrency } from '@scantling/money';
import { type CountedEnquiry, ENQUIRY_OUTCOMES, ENQUIRY_SOURCES } from '@scantling/quoting';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { COVER } from '../../pictures/shown-pictures.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = BodyOf<typeof createEnquiry>;

const WITH_REST = {
  client: { select: { name: true } },
  hours: { select: { hours: true } },
  earlyPrices: {
    select: { number: true, givenOn: true, currency: true, low: true, high: true },
    orderBy: { number: 'desc' },
    take: 1,
  },
  pictures: COVER,
} as const;
type Row = Prisma.EnquiryGetPayload<{ include: typeof WITH_REST }>;

const dayOf = (date: Date) => date.toISOString().slice(0, 10);

export function toEnquiry(row: Row): EnquiryRecord {
  const [last] = row.earlyPrices;
  const { id, name, clientId, askedBy, contact, sourceNote, wanted, outcomeReason, isDemo, version } = row;
  return {
    id,
    name,
    clientId,
    clientName: row.client?.name ?? null,
    askedBy,
    contact,
    receivedOn: dayOf(row.receivedOn),
    source: ENQUIRY_SOURCES.find((source) => source === row.source) ?? 'other',
    sourceNote,
    wanted,
    wantedBy: row.wantedBy === null ? null : dayOf(row.wantedBy),
    budget: row.budget === null ? null : row.budget.toFixed(),
    outcome: ENQUIRY_OUTCOMES.find((outcome) => outcome === row.outcome) ?? 'open',
    outcomeOn: row.outcomeOn === null ? null : dayOf(row.outcomeOn),
    outcomeReason,
    hoursSpent: sumOf(row.hours.map(({ hours }) => hours.toFixed())).toFixed(),
    lastEarlyPrice:
      last === undefined || !isCurrency(last.currency)
        ? null
        : {
            number: last.number,
            givenOn: dayOf(last.givenOn),
            currency: last.currency,
            low: last.low.toFixed(),
            high: last.high.toFixed(),
          },
    cover: row.pictures[0] ?? null,
    isDemo,
    version,
    createdAt: row.createdAt.toISOString(),
  };
}

export interface EnquiryFilters {
  readonly outcome?: string | undefined;
  readonly source?: string | undefined;
  readonly clientId?: string | undefined;
  readonly receivedFrom?: string | undefined;
  readonly receivedTo?: string | undefined;
}

/** The newest first, after the one named. */
export function enquiryPage(
  database: Database,
  { receivedFrom, receivedTo, ...filters }: EnquiryFilters,
  limit: number,
  after: { day: Date; id: string } | undefined,
) {
  const receivedOn = {
    ...(receivedFrom === undefined ? {} : { gte: new Date(receivedFrom) }),
    ...(receivedTo === undefined ? {} : { lte: new Date(receivedTo) }),
  };
  const where = Object.fromEntries(Object.entries(filters).filter(([, value]) => value !== undefined));
  return database.enquiry.findMany({
    where: {
      AND: [
        { ...where, receivedOn },
        after === undefined
          ? {}
          : { OR: [{ receivedOn: { lt: after.day } }, { receivedOn: after.day, id: { lt: after.id } }] },
      ],
    },
    orderBy: [{ receivedOn: 'desc' }, { id: 'desc' }],
    take: limit + 1,
    include: WITH_REST,
  });
}

/** @throws RequestProblem not-found */
export async function findEnquiry(database: Prisma.TransactionClient, id: string): Promise<EnquiryRecord> {
  const row = await database.enquiry.findUnique({ where: { id }, include: WITH_REST });
  if (row === null) throw notFound('enquiry');
  return toEnquiry(row);
}

/** @throws RequestProblem input-invalid naming each field that cannot be used */
async function toData(database: Prisma.TransactionClient, given: Given) {
  const errors: FieldProblem[] = [];
  const refuse = (field: string, message: string, mend: string) => errors.push({ field, message, mend });
  if (given.clientId === null && given.askedBy.trim() === '')
    refuse('askedBy', 'is missing', 'Enter who asked, or choose a client.');
  if (given.clientId !== null && (await database.client.count({ where: { id: given.clientId } })) === 0)
    refuse('clientId', 'names no client', 'Choose one of the clients, or none.');
  const isDecided = given.outcome === 'won' || given.outcome === 'lost';
  if (isDecided && given.outcomeOn === null)
    refuse('outcomeOn', 'is missing', `Enter the day it was ${given.outcome}.`);
  if (given.outcomeOn !== null && given.outcomeOn < given.receivedOn)
    refuse('outcomeOn', 'is before the enquiry was received', 'Correct one of the two days.');
  if (given.outcome === 'lost' && given.outcomeReason.trim() === '')
    refuse('outcomeReason', 'is missing', 'Say why it was lost, as far as you know.');
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  const day = (text: string | null) => (text === null ? null : new Date(text));
  return {
    ...given,
    receivedOn: new Date(given.receivedOn),
    wantedBy: day(given.wantedBy),
    outcomeOn: day(given.outcomeOn),
  };
}

/** @throws RequestProblem input-invalid */
export async function addEnquiry(
  database: Prisma.TransactionClient,
  given: Given,
  isDemo = false,
): Promise<EnquiryRecord> {
  const data = await toData(database, given);
  return toEnquiry(await database.enquiry.create({ data: { ...data, isDemo }, include: WITH_REST }));
}

/** @throws RequestProblem version-stale, not-found, input-invalid */
export function changeEnquiry(
  database: Database,
  where: RecordVersion,
  given: Given,
): Promise<EnquiryRecord> {
  return database.$transaction(async (transaction) => {
    const data = { ...(await toData(transaction, given)), version: { increment: 1 } };
    const { count } = await transaction.enquiry.updateMany({ where, data });
    await requireUpdated(count, 'enquiry', () => enquiryExists(transaction, where.id));
    return findEnquiry(transaction, where.id);
  });
}

/** @throws RequestProblem version-stale, not-found */
export async function dropEnquiry(database: Database, where: RecordVersion): Promise<void> {
  const { count } = await database.enquiry.deleteMany({ where });
  await requireUpdated(count, 'enquiry', () => enquiryExists(database, where.id));
}

async function enquiryExists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.enquiry.count({ where: { id } })) > 0;
}

/** @throws RequestProblem not-found */
export async function requireEnquiry(database: Prisma.TransactionClient, id: string): Promise<void> {
  if (!(await enquiryExists(database, id))) throw notFound('enquiry');
}

/** Source, outcome and hours of every enquiry received from a day on. */
export async function countedEnquiries(
  database: Database,
  from: string | undefined,
): Promise<CountedEnquiry[]> {
  const rows = await database.enquiry.findMany({
    where: from === undefined ? {} : { receivedOn: { gte: new Date(from) } },
    select: { source: true, outcome: true, hours: { select: { hours: true } } },
  });
  return rows.map((row) => ({
    source: ENQUIRY_SOURCES.find((source) => source === row.source) ?? 'other',
    outcome: row.outcome === 'won' || row.outcome === 'lost' ? row.outcome : 'undecided',
    hours: sumOf(row.hours.map(({ hours }) => hours.toFixed())),
  }));
}
