import type { Readable } from 'node:stream';
import { RequestProblem } from './problems/request-problem.ts';

/**
 * A file of a request, whole, where it has no more than so many bytes.
 * @throws RequestProblem request-too-large with `tooLarge` as its detail
 */
export async function readBytes(content: Readable, most: number, tooLarge: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of content) {
    if (!(chunk instanceof Uint8Array)) throw new TypeError('a file is read as bytes');
    size += chunk.length;
    // Leaving the loop destroys the stream, so that the rest is not taken in.
    if (size > most) throw new RequestProblem('request-too-large', { detail: tooLarge });
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
