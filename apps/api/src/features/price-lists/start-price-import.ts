import type { Readable } from 'node:stream';
import { startPriceImport } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { keepPriceFile, readOn } from './begin-price-import.ts';
import { toPriceImport } from './price-import-records.ts';

const MOST_BYTES = 20 * 1024 * 1024;

async function readBytes(content: Readable): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of content) {
    if (!(chunk instanceof Uint8Array)) throw new TypeError('a file is read as bytes');
    size += chunk.length;
    // Leaving the loop destroys the stream, so that the rest is not taken in.
    if (size > MOST_BYTES)
      throw new RequestProblem('request-too-large', { detail: 'The file has more than 20 MB: split it.' });
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

export const answerStartPriceImport = handle(
  startPriceImport,
  async ({ query, file, actor, services, request }) => {
    const { name: fileName, content } = await file();
    const bytes = await readBytes(content);
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
