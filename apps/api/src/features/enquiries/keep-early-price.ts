import { keepEarlyPrice } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { addEarlyPrice } from './early-price-records.ts';

export const answerKeepEarlyPrice = handle(keepEarlyPrice, ({ params, body, actor, services }) => {
  const given = { ...body, createdBy: signedIn(actor).id, givenOn: services.clock() };
  return services.database.$transaction((transaction) => addEarlyPrice(transaction, params.id, given));
});
