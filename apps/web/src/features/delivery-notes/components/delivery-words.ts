import { decimal } from '@scantling/decimals';
import { unitAfter } from '@scantling/quoting';
import { formatNumber } from '../../../lib/format.ts';
import type { DeliveryNote, OrderedLine } from '../api/list-delivery-notes.ts';

/** "1 piece", "2.5 m": how many of what, in the reader's writing of numbers. */
export function countWords(quantity: string, unit: string, locale: string): string {
  return `${formatNumber(quantity, decimal(quantity).decimalPlaces(), { locale })} ${unitAfter(quantity, unit)}`.trim();
}

/** Everything that a note hands over, in one line. */
export function contentWords({ document }: DeliveryNote, locale: string): string {
  return document.lines
    .map(({ quantity, unit, description }) => `${countWords(quantity, unit, locale)} ${description}`)
    .join('; ');
}

export function isOutstanding({ outstanding }: OrderedLine): boolean {
  return decimal(outstanding).gt(0);
}
