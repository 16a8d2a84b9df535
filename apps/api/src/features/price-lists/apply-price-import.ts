import { applyPriceImport } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { toPriceImport } from './price-import-records.ts';
import { takeOverPrices } from './take-over-prices.ts';

export const answerApplyPriceImport = handle(applyPriceImport, async ({ params, body, actor, services }) => {
  const { leaveOutUnreadable } = body;
  const createdBy = actorKey(signedIn(actor));
  return toPriceImport(await takeOverPrices(services, params.id, { leaveOutUnreadable, createdBy }));
});
