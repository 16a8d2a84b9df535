import { enquiryHoursInputSchema, enquiryInputSchema, overallSizeSchema } from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { addEarlyPrice } from '../enquiries/early-price-records.ts';
import { addHours } from '../enquiries/enquiry-hours-records.ts';
import { addEnquiry } from '../enquiries/enquiry-records.ts';
import { readPastPiece } from '../enquiries/past-piece.ts';
import { demoJson } from './demo-files.ts';

const days = z.number().int().min(0).max(400);
const { name, askedBy, contact, source, sourceNote, wanted, budget, outcome } = enquiryInputSchema.shape;

/** Days are counted from the day of loading, so that the demo's year is always the one before. */
const enquiriesSchema = z.array(
  z.strictObject({
    ...{ name, askedBy, contact, source, sourceNote, wanted, budget, outcome },
    daysAgo: days,
    client: z.string().nullable(),
    wantedInDays: days.nullable(),
    decidedAfterDays: days.nullable(),
    reason: z.string(),
    hours: z.array(
      z.strictObject({ afterDays: days, person: z.string(), hours: z.string(), note: z.string() }),
    ),
    earlyPrice: z
      .strictObject({
        from: z.array(z.string()).min(1),
        asked: overallSizeSchema,
        afterDays: days,
        note: z.string(),
      })
      .exactOptional(),
  }),
);
type DemoEnquiry = z.output<typeof enquiriesSchema>[number];

function dayAfter(start: Date, count: number): string {
  return new Date(start.getTime() + count * 86_400_000).toISOString().slice(0, 10);
}

function find(ids: ReadonlyMap<string, string>, wantedName: string): string {
  const id = ids.get(wantedName);
  if (id === undefined)
    throw new Error(`prisma/demo/enquiries.json names "${wantedName}", which is not there`);
  return id;
}

const byName = (rows: readonly { id: string; name: string }[]) =>
  new Map(rows.map((row) => [row.name, row.id]));

/** Enquiries with hours and early prices, entered as a person enters them. */
export async function enterEnquiries(
  transaction: Prisma.TransactionClient,
  createdBy: string,
  now: Date,
): Promise<void> {
  const demo = { where: { isDemo: true } };
  const clients = byName(await transaction.client.findMany(demo));
  const people = byName(await transaction.person.findMany(demo));
  const sheets = new Map((await transaction.costSheet.findMany(demo)).map(({ id, title }) => [title, id]));
  for (const given of enquiriesSchema.parse(await demoJson('enquiries.json'))) {
    const received = new Date(now.getTime() - given.daysAgo * 86_400_000);
    const { id } = await addEnquiry(transaction, toInput(given, received, clients), true);
    for (const { afterDays, person, ...entry } of given.hours) {
      const entered = { ...entry, onDate: dayAfter(received, afterDays), personId: find(people, person) };
      await addHours(transaction, id, enquiryHoursInputSchema.parse(entered));
    }
    if (given.earlyPrice === undefined) continue;
    const { from, asked, afterDays, note } = given.earlyPrice;
    const givenOn = dayAfter(received, afterDays);
    const past = [];
    for (const title of from) past.push(await readPastPiece(transaction, find(sheets, title), givenOn));
    const [first] = past;
    if (first === undefined) continue;
    const pieces = past.map(({ piece }) => piece);
    const input = { currency: first.currency, pieces, asked: { size: asked }, terms: first.terms };
    await addEarlyPrice(transaction, id, { input, note, createdBy, givenOn: new Date(givenOn) });
  }
}

function toInput(given: DemoEnquiry, received: Date, clients: ReadonlyMap<string, string>) {
  const { client, daysAgo: _days, wantedInDays, decidedAfterDays, reason, hours: _hours, ...rest } = given;
  const { earlyPrice: _early, ...fields } = rest;
  return enquiryInputSchema.parse({
    ...fields,
    clientId: client === null ? null : find(clients, client),
    receivedOn: dayAfter(received, 0),
    wantedBy: wantedInDays === null ? null : dayAfter(received, wantedInDays),
    outcomeOn: decidedAfterDays === null ? null : dayAfter(received, decidedAfterDays),
    outcomeReason: reason,
  });
}
