import { zipEntries } from './zip-entries.ts';

/** The first moment a ZIP file can name: midnight of 1980-01-01 (PKWARE APPNOTE, 4.4.6). */
const FIRST_TIME = 0;
const FIRST_DATE = 0x21;

/** The same ZIP file with every entry at the first date there is, so that it does not tell when it was written. */
export function datedZip(bytes: Uint8Array): Uint8Array {
  const dated = bytes.slice();
  const view = new DataView(dated.buffer);
  for (const entry of zipEntries(dated) ?? []) {
    view.setUint16(entry.at + 12, FIRST_TIME, true);
    view.setUint16(entry.at + 14, FIRST_DATE, true);
    view.setUint16(entry.localHeader + 10, FIRST_TIME, true);
    view.setUint16(entry.localHeader + 12, FIRST_DATE, true);
  }
  return dated;
}
