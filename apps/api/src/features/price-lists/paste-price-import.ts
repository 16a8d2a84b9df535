import { pastePriceImport } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { keepPriceFile, readOn } from './begin-price-import.ts';
import { toPriceImport } from './price-import-records.ts';

export const answerPastePriceImport = handle(pastePriceImport, async ({ body, actor, services, request }) => {
  const { text, ...given } = body;
  const terms = { ...given, name: given.name ?? `Pasted for ${given.validFrom}` };
  const bytes = new TextEncoder().encode(text);
  const createdBy = actorKey(signedIn(actor));
  const row = await keepPriceFile(services, { terms, fileName: 'pasted text', bytes, createdBy });
  if (row.status === 'reading')
    void readOn(services.database, row.id, (error) => request.log.error(error, 'a price list was not read'));
  return toPriceImport(row);
});
