import { startPriceImport } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { readBytes } from '../../read-bytes.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { keepPriceFile, readOn } from './begin-price-import.ts';
import { toPriceImport } from './price-import-records.ts';

const MOST_BYTES = 20 * 1024 * 1024;

export const answerStartPriceImport = handle(
  startPriceImport,
  async ({ query, file, actor, services, request }) => {
    const { name: fileName, content } = await file();
    const bytes = await readBytes(content, MOST_BYTES, 'The file has more than 20 MB: split it.');
    const terms = { ...query, name: query.name ?? fileName };
    const row = await keepPriceFile(services, {
      terms,
      fileName,
      bytes,
      createdBy: actorKey(signedIn(actor)),
    });
    if (row.status === 'reading')
      void readOn(services.database, row.id, (error) =>
        request.log.error(error, 'a price list was not read'),
      );
    return toPriceImport(row);
  },
);
