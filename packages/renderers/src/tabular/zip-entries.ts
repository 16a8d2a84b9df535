const CENTRAL_ENTRY = 0x02014b50;
const END_OF_DIRECTORY = 0x06054b50;

interface ZipEntry {
  /** Where its record in the central directory begins. */
  readonly at: number;
  /** Where its own header begins. */
  readonly localHeader: number;
  readonly unpackedBytes: number;
}

/**
 * The entries of a ZIP file by its central directory (PKWARE APPNOTE, 4.3.12 and 4.3.16).
 * @returns null where the directory cannot be found, so the file is broken
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // The end record is 22 bytes and a comment of at most 65,535.
  for (let at = bytes.length - 22; at >= Math.max(0, bytes.length - 22 - 65_535); at -= 1) {
    if (view.getUint32(at, true) !== END_OF_DIRECTORY) continue;
    let entry = view.getUint32(at + 16, true);
    const entries: ZipEntry[] = [];
    for (let left = view.getUint16(at + 10, true); left > 0; left -= 1) {
      if (entry + 46 > at || view.getUint32(entry, true) !== CENTRAL_ENTRY) return null;
      entries.push({
        at: entry,
        localHeader: view.getUint32(entry + 42, true),
        unpackedBytes: view.getUint32(entry + 24, true),
      });
      entry +=
        46 +
        view.getUint16(entry + 28, true) +
        view.getUint16(entry + 30, true) +
        view.getUint16(entry + 32, true);
    }
    return entries;
  }
  return null;
}

/** Bytes a ZIP file says it holds when unpacked; null where it is broken. */
export function unpackedSize(bytes: Uint8Array): number | null {
  const entries = zipEntries(bytes);
  return entries === null ? null : entries.reduce((size, { unpackedBytes }) => size + unpackedBytes, 0);
}
