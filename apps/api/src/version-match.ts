import { RequestProblem } from './problems/request-problem.ts';

/** A record at one version, as If-Match names it. */
export type RecordVersion = Readonly<{ id: string; version: number }>;

/** The entity tag of a record's version. */
export function etagOf(version: number): string {
  return `"${version}"`;
}

/**
 * The version an If-Match header names (RFC 9110, 13.1.1: strong comparison, so weak tags never match).
 * @throws RequestProblem version-needed without the header, version-stale where it cannot be a version of ours
 */
export function readIfMatch(header: string | undefined): number {
  if (header === undefined || header.trim() === '') throw new RequestProblem('version-needed');
  const version = /^"(\d{1,9})"$/.exec(header.trim())?.[1];
  if (version === undefined)
    throw new RequestProblem('version-stale', {
      errors: [
        {
          field: 'header.If-Match',
          message: 'is no ETag of this record',
          mend: 'Send the ETag as it was received, with its quotation marks.',
        },
      ],
    });
  return Number(version);
}

/**
 * Checks the outcome of an update that asked for one version: `updateMany({ where: { id, version } })`.
 * @param exists tells whether the record is there at all
 * @throws RequestProblem version-stale or not-found
 */
export async function requireUpdated(
  count: number,
  what: string,
  exists: () => Promise<boolean>,
): Promise<void> {
  if (count > 0) return;
  if (await exists()) throw new RequestProblem('version-stale');
  throw new RequestProblem('not-found', { detail: `There is no ${what} with this id.` });
}
