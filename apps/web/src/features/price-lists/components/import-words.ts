import { formatNumber } from '../../../lib/format.ts';
import type { PriceImport } from '../api/price-import-calls.ts';

export const PHASE_WORDS: Readonly<Record<NonNullable<PriceImport['phase']>, string>> = {
  reading: 'Reading the file',
  comparing: 'Comparing with the prices in force',
  'taking-over': 'Taking over',
};

const STATUS_WORDS: Readonly<Record<PriceImport['status'], string>> = {
  reading: 'Waits to be read',
  waiting: 'Columns to be matched',
  previewed: 'To be looked at and taken over',
  applied: 'Taken over',
  unchanged: 'Taken over before',
  discarded: 'Dropped',
  failed: 'Could not be read',
};

/** How an import stands, in words. */
export function standOf(priceImport: PriceImport): string {
  const { phase, status } = priceImport;
  if (phase === null) return STATUS_WORDS[status];
  const share = shareRead(priceImport);
  return share === undefined ? PHASE_WORDS[phase] : `${PHASE_WORDS[phase]}: ${formatNumber(share, 0)} %`;
}

/** How much of the file has been read, 0 to 100; undefined while something else is done with it. */
export function shareRead({ phase, bytesRead, bytesTotal }: PriceImport): number | undefined {
  if (phase !== 'reading' || bytesTotal === 0) return undefined;
  return Math.min(100, Math.floor((bytesRead / bytesTotal) * 100));
}
