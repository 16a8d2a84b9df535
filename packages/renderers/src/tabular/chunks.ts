const CHUNK_BYTES = 64 * 1024;

/**
 * Bytes in pieces, as a stream takes them.
 * @param onTaken told how many bytes have been taken, with each piece
 */
export function* chunksOf(bytes: Uint8Array, onTaken?: (count: number) => void): Generator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += CHUNK_BYTES) {
    const chunk = bytes.subarray(at, at + CHUNK_BYTES);
    onTaken?.(at + chunk.length);
    yield chunk;
  }
}
