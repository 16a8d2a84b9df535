import { listPriceImpacts } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { undecidedImpacts, undecidedQuotes } from './impact-records.ts';

export const answerListPriceImpacts = handle(listPriceImpacts, async ({ query, services }) => {
  const after = readCursor(query.cursor, 2);
  const impacts = await undecidedImpacts(services.database, { after, take: query.limit + 1 });
  const page = toPage(
    impacts,
    query.limit,
    ({ validFrom, listId }) => [validFrom, listId],
    (impact) => impact,
  );
  return { ...page, openQuotes: await undecidedQuotes(services.database) };
});
