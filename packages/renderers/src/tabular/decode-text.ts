import { chunksOf } from './chunks.ts';
import type { TextEncoding } from './table.ts';

function isUtf8(bytes: Uint8Array): boolean {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for (const chunk of chunksOf(bytes)) decoder.decode(chunk, { stream: true });
    decoder.decode();
    return true;
  } catch {
    return false;
  }
}

/** Latin letters in UTF-16 have a zero in every other byte; the other encodings have none. */
function zeroShare(bytes: Uint8Array, offset: 0 | 1): number {
  const sample = bytes.subarray(0, 4096);
  let zeros = 0;
  for (let at = offset; at < sample.length; at += 2) if (sample[at] === 0) zeros += 1;
  return sample.length < 2 ? 0 : zeros / (sample.length / 2);
}

/** The encoding by its byte order mark, else by what the bytes can be; what is not UTF-8 is taken as Windows-1252. */
export function detectEncoding(bytes: Uint8Array): TextEncoding {
  const [first, second, third] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  if (first === 0xef && second === 0xbb && third === 0xbf) return 'utf-8';
  if (zeroShare(bytes, 1) > 0.4) return 'utf-16le';
  if (zeroShare(bytes, 0) > 0.4) return 'utf-16be';
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

/** The text in pieces, without its byte order mark, so that a large file is never one string. */
export function* decodeText(
  bytes: Uint8Array,
  encoding: TextEncoding,
  onTaken?: (count: number) => void,
): Generator<string> {
  const decoder = new TextDecoder(encoding);
  for (const chunk of chunksOf(bytes, onTaken)) yield decoder.decode(chunk, { stream: true });
  yield decoder.decode();
}
