import { listQuotes } from '@scantling/contracts';
import type { QuoteState } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { currenciesOf } from './quote-records.ts';
import { dayOf, toQuoteSummary, WITH_SHORT_REVISIONS } from './quote-rows.ts';

/** Sent and expired are told apart by the date of validity alone. */
function inState(state: QuoteState | undefined, today: string): Prisma.QuoteWhereInput {
  if (state === undefined) return {};
  const day = new Date(`${today}T00:00:00Z`);
  if (state === 'sent') return { state, validUntil: { gte: day } };
  if (state === 'expired') return { state: 'sent', validUntil: { lt: day } };
  return { state };
}

function withText(text: string | undefined): Prisma.QuoteWhereInput {
  if (text === undefined || text === '') return {};
  const contains = { contains: text, mode: 'insensitive' } as const;
  return { OR: [{ title: contains }, { number: contains }, { client: { name: contains } }] };
}

export const answerListQuotes = handle(listQuotes, async ({ query, services }) => {
  const today = dayOf(services.clock());
  const [id] = readCursor(query.cursor, 1) ?? [];
  const { clientId, enquiryId } = query;
  const rows = await services.database.quote.findMany({
    where: {
      AND: [inState(query.state, today), withText(query.text)],
      ...(clientId === undefined ? {} : { clientId }),
      ...(enquiryId === undefined ? {} : { enquiryId }),
      // Ids are made in the order of time (UUID 7).
      ...(id === undefined ? {} : { id: { lt: id } }),
    },
    orderBy: { id: 'desc' },
    take: query.limit + 1,
    include: WITH_SHORT_REVISIONS,
  });
  const currencies = await currenciesOf(
    services.database,
    rows.map((row) => row.id),
  );
  return toPage(
    rows,
    query.limit,
    (row) => [row.id],
    (row) => toQuoteSummary(row, currencies.get(row.id) ?? '', today),
  );
});
