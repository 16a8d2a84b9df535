import { createHash } from 'node:crypto';
import type { Database } from '../../database/connect.ts';
import type { Services } from '../../services.ts';
import type { DatabaseAccess } from './database-access.ts';
import { completeTerms, type GivenTerms, type ListTermsRecord } from './list-terms.ts';
import { type ImportSettings, PRICE_IMPORT_KIND, WITHOUT_CONTENT } from './price-import-records.ts';
import { readPriceFile } from './read-price-file.ts';

// A reading that has not moved for so long has nobody at work on it any more: its process ended.
const ABANDONED_MS = 60_000;

/** Imports that this process reads. */
const underway = new Map<string, Promise<void>>();

/**
 * True where the supplier's prices already are what this file says: the same bytes were taken over for that day, or
 * nothing came after them.
 */
export async function isKnownFile(
  database: DatabaseAccess,
  terms: ListTermsRecord,
  sha256: string,
): Promise<boolean> {
  const rows = await database.$queryRaw<{ known: boolean }[]>`
    select exists (
      select 1 from "PriceList" list
      where list."supplierId" = ${terms.supplierId} and list."sourceSha256" = ${sha256}
        and (list."isComplete" or not ${terms.isComplete}) and list."validFrom" <= ${terms.validFrom}::date
        and (list."validFrom" = ${terms.validFrom}::date or not exists (
          select 1 from "PriceList" later
          where later."supplierId" = list."supplierId" and later."validFrom" <= ${terms.validFrom}::date
            and (later."validFrom", later."createdAt", later.id) > (list."validFrom", list."createdAt", list.id)))
    ) as known`;
  return rows[0]?.known ?? false;
}

/** Reads on in the background; the promise is for those who wait, and never rejects. */
export function readOn(database: Database, id: string, onError: (error: unknown) => void): Promise<void> {
  const known = underway.get(id);
  if (known !== undefined) return known;
  const reading = readPriceFile(database, id)
    .catch(onError)
    .finally(() => underway.delete(id));
  underway.set(id, reading);
  return reading;
}

/** Sets an import going again whose reader was killed; whoever asks for it calls this. */
export function readAbandoned(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  row: { id: string; status: string; updatedAt: Date },
  onError: (error: unknown) => void,
): void {
  if (isAbandoned(row, clock())) void readOn(database, row.id, onError);
}

/** True where an import says that it is being read, but whoever read it has gone. */
function isAbandoned(row: { id: string; status: string; updatedAt: Date }, now: Date): boolean {
  return (
    row.status === 'reading' &&
    !underway.has(row.id) &&
    now.getTime() - row.updatedAt.getTime() > ABANDONED_MS
  );
}

export interface GivenFile {
  readonly terms: GivenTerms;
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly createdBy: string;
}

/**
 * Keeps a file as an import to be read; nothing about prices changes. A file that was taken over already is
 * "unchanged" at once.
 * @throws RequestProblem input-invalid
 */
export async function keepPriceFile(
  { database, clock }: Pick<Services, 'database' | 'clock'>,
  given: GivenFile,
) {
  const terms = await completeTerms(database, given.terms);
  const sha256 = createHash('sha256').update(given.bytes).digest('hex');
  const isKnown = await isKnownFile(database, terms, sha256);
  const settings: ImportSettings = {
    terms,
    mapping: null,
    isMappedByHand: false,
    headers: [],
    missingColumns: [],
    found: null,
    priceListId: null,
  };
  return database.fileImport.create({
    data: {
      kind: PRICE_IMPORT_KIND,
      supplierId: terms.supplierId,
      fileName: given.fileName,
      sha256,
      status: isKnown ? 'unchanged' : 'reading',
      phase: isKnown ? null : 'reading',
      settings,
      bytesTotal: given.bytes.length,
      content: isKnown ? null : new Uint8Array(given.bytes),
      createdBy: given.createdBy,
      createdAt: clock(),
    },
    omit: WITHOUT_CONTENT,
  });
}
