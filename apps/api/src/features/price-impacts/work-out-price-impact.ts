import { workOutPriceImpact } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { noteImpact, workOnNew } from './begin-impact.ts';
import { findImpact } from './impact-records.ts';

export const answerWorkOutPriceImpact = handle(workOutPriceImpact, async ({ params, services, request }) => {
  const { database } = services;
  const { id } = params;
  const { status } = await findImpact(database, id);
  // Asked for while it is being worked out, it is not begun anew.
  if (status !== 'waiting' && status !== 'working')
    await database.$transaction((transaction) => noteImpact(transaction, id));
  workOnNew(services, id, request.log);
  return findImpact(database, id);
});
