import { Decimal, decimal } from '@scantling/decimals';

const PLAIN = /^-?\d+(\.\d+)?$/;

/** "0.125" as "12.5", exactly; what is no decimal stays as it is, so that the server can name what is wrong. */
export function toPercent(share: string): string {
  return PLAIN.test(share) ? decimal(share).times(100).toFixed() : share;
}

/** "12.5" or "12,5" as "0.125", exactly; what is no decimal stays as it is. */
export function fromPercent(percent: string): string {
  const text = plainDecimal(percent);
  return PLAIN.test(text) ? new Decimal(text).div(100).toFixed() : text;
}

/**
 * A typed number as decimal text: trimmed, spaces between digits left out, a single comma read as the decimal sign.
 * "1,250" may mean two things and stays as typed, for the server to ask.
 */
export function plainDecimal(typed: string): string {
  const text = typed.trim().replace(/(?<=\d)[\s\u00a0\u202f](?=\d)/g, '');
  return /^-?(\d+,(\d{1,2}|\d{4,})|0,\d+)$/.test(text) ? text.replace(',', '.') : text;
}

/** The same, with nothing typed as null. */
export function optionalDecimal(typed: string): string | null {
  const text = plainDecimal(typed);
  return text === '' ? null : text;
}
