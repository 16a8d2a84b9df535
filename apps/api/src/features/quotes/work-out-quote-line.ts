import { workOutQuoteLine } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { lineSheet } from './line-sheet.ts';
import { dayOf } from './quote-rows.ts';

export const answerWorkOutQuoteLine = handle(workOutQuoteLine, async ({ params, query, services }) => {
  const { database, clock } = services;
  const { worked } = await lineSheet(database, params, dayOf(clock()), { withDerivations: query.working });
  return worked;
});
