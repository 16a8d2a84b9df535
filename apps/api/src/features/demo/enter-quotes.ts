import { randomBytes } from 'node:crypto';
import { discountSchema, draftLineSchema, type Workshop } from '@scantling/contracts';
import type { DraftLine, QuoteDraft } from '@scantling/quoting';
import { createPaperRenderer } from '@scantling/renderers';
import { z } from 'zod';
import type { Config } from '../../config.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { acceptRevision, declineRevision } from '../quotes/answer-revision.ts';
import { daysAfter } from '../quotes/client-facts.ts';
import { changeRevision, findRevision, findRevisionRow, nextState } from '../quotes/quote-records.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { sendRevision } from '../quotes/send-revision.ts';
import { startAddition, startDraft } from '../quotes/start-draft.ts';
import { addAddition, addQuote, addRevision, changeDraft } from '../quotes/write-draft.ts';
import { demoJson } from './demo-files.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

/** A line as a person would list it: `sheet` is the title of a cost sheet. */
const lineSchema = z
  .strictObject({
    id: z.string(),
    kind: z.enum(['free', 'delivery']).default('free'),
    description: z.string(),
    details: z.string().default(''),
    sheet: z.string().optional(),
    pieces: z.number().int().optional(),
    quantity: z.string().default('1'),
    unit: z.string().default(''),
    price: z.string().default('0'),
    cost: z.string().nullable().default(null),
    choice: z.unknown().default({ kind: 'included' }),
  })
  .strict();
const when = { daysAgo: z.number().int().min(0) };
const eventSchema = z.discriminatedUnion('act', [
  z.strictObject({ ...when, act: z.enum(['send', 'withdraw']) }),
  z.strictObject({
    ...when,
    act: z.literal('accept'),
    name: z.string(),
    how: z.string().optional(),
    chosen: z.array(z.string()).default([]),
    remark: z.string().default(''),
  }),
  z.strictObject({ ...when, act: z.literal('decline'), reason: z.string() }),
  z.strictObject({ ...when, act: z.literal('revise'), discount: discountSchema }),
  z.strictObject({ ...when, act: z.literal('add'), title: z.string(), lines: z.array(lineSchema) }),
]);
const quotesSchema = z.array(
  z.strictObject({
    title: z.string(),
    client: z.string(),
    intro: z.string().default(''),
    lines: z.array(lineSchema),
    discount: discountSchema.nullable().default(null),
    validDays: z.number().int().optional(),
    promisedInDays: z.number().int().optional(),
    events: z.array(eventSchema),
  }),
);
type GivenQuote = z.output<typeof quotesSchema>[number];
type Event = z.output<typeof eventSchema>;

type Entry = {
  transaction: Prisma.TransactionClient;
  sender: Parameters<typeof sendRevision>[1];
  workshop: Workshop;
  createdBy: string;
  now: Date;
  idOf: (kind: 'client' | 'cost sheet', name: string) => string;
};

function readLine(given: z.output<typeof lineSchema>, { workshop, idOf }: Entry): DraftLine {
  const { id, kind, description, details, sheet, pieces, quantity, unit, price, cost, choice } = given;
  const [first] = workshop.settings.quoting.taxCategories;
  const common = { id, description, details, choice, tax: first?.id, pictures: [] };
  if (sheet !== undefined)
    return draftLineSchema.parse({
      ...common,
      kind: 'cost-sheet',
      costSheetId: idOf('cost sheet', sheet),
      pieces,
    });
  const free = kind === 'free' ? { quantity, unit } : {};
  return draftLineSchema.parse({ ...common, kind, price, cost, ...free });
}

async function beginQuote(given: GivenQuote, entry: Entry): Promise<{ quoteId: string; revisionId: string }> {
  const { transaction, workshop, now, createdBy, idOf } = entry;
  const start = startDraft(workshop);
  const { promisedInDays } = given;
  const draft: QuoteDraft = {
    ...start,
    intro: given.intro,
    lines: given.lines.map((line) => readLine(line, entry)),
    discount: given.discount,
    validDays: given.validDays ?? start.validDays,
    promisedOn: promisedInDays === undefined ? null : daysAfter(dayOf(now), promisedInDays),
  };
  const body = { title: given.title, clientId: idOf('client', given.client), enquiryId: null, draft };
  const quoteId = await addQuote(transaction, body, { createdBy, isDemo: true });
  const { id: revisionId } = await transaction.quoteRevision.findFirstOrThrow({ where: { quoteId } });
  return { quoteId, revisionId };
}

/** Does one thing that happened to a quote, at its time. @returns the revision it is at afterwards */
async function happen(
  event: Event,
  at: { quoteId: string; revisionId: string },
  entry: Entry,
): Promise<string> {
  const { transaction, sender, createdBy } = entry;
  const now = new Date(entry.now.getTime() - event.daysAgo * DAY_MS);
  const today = dayOf(now);
  const { revisionId: id } = at;
  const row = await findRevisionRow(transaction, id);
  switch (event.act) {
    case 'send':
      await sendRevision(transaction, sender, { id, version: row.version, sentBy: createdBy, now });
      return id;
    case 'withdraw':
      await changeRevision(transaction, row, { state: nextState(row, 'withdraw', today) });
      return id;
    case 'accept': {
      const { name, remark, chosen, how } = event;
      const by =
        how === undefined
          ? ({ kind: 'link' } as const)
          : ({ kind: 'workshop', actor: createdBy, how } as const);
      await acceptRevision(transaction, row, { name, remark, chosen, by, at: now, onDay: today });
      return id;
    }
    case 'decline':
      await declineRevision(transaction, row, { reason: event.reason, at: now, by: { kind: 'link' } }, today);
      return id;
    case 'revise': {
      const made = await addRevision(transaction, { id, today }, { createdBy });
      const { title, clientId, enquiryId, draft, version } = await findRevision(transaction, made, today);
      const changed = { ...draft, discount: event.discount };
      const where = { id: made, version, today };
      await changeDraft(transaction, where, { title, clientId, enquiryId, draft: changed });
      return made;
    }
    case 'add': {
      const { draft: original } = await findRevision(transaction, id, today);
      const lines = event.lines.map((line) => readLine(line, entry));
      const draft = { ...startAddition(original), lines };
      const given = { title: event.title, draft };
      return addAddition(transaction, { quoteId: at.quoteId, today }, given, { createdBy });
    }
  }
}

async function namesOf(transaction: Prisma.TransactionClient): Promise<Entry['idOf']> {
  const clients = await transaction.client.findMany({ where: { isDemo: true } });
  const sheets = await transaction.costSheet.findMany({ where: { isDemo: true } });
  const ids = {
    client: new Map(clients.map(({ id, name }) => [name, id])),
    'cost sheet': new Map(sheets.map(({ id, title }) => [title, id])),
  };
  return (kind, name) => {
    const id = ids[kind].get(name);
    if (id === undefined) throw new Error(`prisma/demo/quotes.json names no ${kind} "${name}"`);
    return id;
  };
}

/** Quotes in every state, written, sent and answered by the same code as a person's, in the order of their days. */
export async function enterQuotes(
  transaction: Prisma.TransactionClient,
  given: { createdBy: string; now: Date; config: Pick<Config, 'publicUrl' | 'host' | 'port'> },
): Promise<void> {
  const papers = createPaperRenderer();
  try {
    const entry: Entry = {
      transaction,
      sender: { papers, random: randomBytes, config: given.config },
      workshop: await readWorkshop(transaction),
      idOf: await namesOf(transaction),
      createdBy: given.createdBy,
      now: given.now,
    };
    const begun = [];
    for (const quote of quotesSchema.parse(await demoJson('quotes.json')))
      begun.push({ ...(await beginQuote(quote, entry)), events: quote.events });
    const days = begun.flatMap((quote) => quote.events.map((event) => ({ quote, event })));
    for (const { quote, event } of days.toSorted((a, b) => b.event.daysAgo - a.event.daysAgo))
      quote.revisionId = await happen(event, quote, entry);
  } finally {
    await papers.close();
  }
}
