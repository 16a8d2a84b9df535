import type { CostingInputError } from '@scantling/costing';
import { EARLY_PRICE_CLASSES, type EarlyPriceClass, type ScaleBasis } from '@scantling/quoting';
import { sentence } from '../../../lib/sentence.ts';

export const CLASS_LABELS: Readonly<Record<EarlyPriceClass, string>> = {
  materials: 'Materials',
  boughtIn: 'Hardware and bought-in',
  labour: 'Labour',
  machines: 'Machines',
  overhead: 'Overhead',
  other: 'Freight and contingency',
};

export const BASIS_LABELS: Readonly<Record<ScaleBasis, string>> = {
  area: 'area of the six sides',
  volume: 'overall volume',
  length: 'overall length',
  count: 'a count',
  hours: 'the hours',
  none: 'nothing',
};

const FIELDS: Readonly<Record<string, string>> = {
  'asked.size': 'The size',
  'asked.size.length': 'The length',
  'asked.size.width': 'The width',
  'asked.size.height': 'The height',
  'asked.hours': 'The hours',
  'asked.count': 'The count',
  'adjustment.factor': 'The adjustment',
  'adjustment.reason': 'The reason',
  'band.below': 'The band below',
  'band.above': 'The band above',
};

/** What keeps a range from being worked out, in words of the form. */
export function problemWords({ field, reason, mend }: CostingInputError, pieces: readonly string[]): string {
  const [, at, rest] = /^pieces\.(\d+)\.(.+)$/.exec(field) ?? [];
  const piece = at === undefined ? undefined : pieces[Number(at)];
  const named = EARLY_PRICE_CLASSES.find((name) => field === `scaling.${name}.exponent`);
  const subject =
    piece !== undefined
      ? `The ${rest} of “${piece}”`
      : named !== undefined
        ? `The exponent of ${CLASS_LABELS[named].toLowerCase()}`
        : (FIELDS[field] ?? (field.startsWith('terms.') ? 'The price policy' : field));
  const advice = `${mend.charAt(0).toUpperCase()}${mend.slice(1)}.`;
  return `${sentence(subject, reason)} ${advice}`;
}
