import { type DecimalLike, decimal, formatNumber, formatPercent } from '@scantling/decimals';
import { type Currency, formatMoney, formatRate } from '@scantling/money';
import { formatLength, type LengthSystem, placesOf, type Unit, unitWords } from '@scantling/units';
import { readDay } from './read-day.ts';

/** How a workshop writes on paper. */
export interface PaperStyle {
  /** BCP 47, such as en-US or en-GB: marks of decimals and thousands, order of a date. */
  readonly locale: string;
  readonly currency: Currency;
  readonly lengths: LengthSystem;
}

/** Counted in whole things, whose word takes an s from two on; "each" is counted without a word. */
const COUNTED: ReadonlySet<Unit> = new Set<Unit>(['piece', 'sheet', 'pack', 'coat']);
const MARK_OF_MINUS = /^-/;

function noBreak(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

/** Writers of every kind of value a paper shows; numbers and their units never part at the end of a line. */
export interface PaperWriters {
  /** An amount at the currency's minor unit. */
  readonly money: (value: DecimalLike) => string;
  /** A price for one of something: keeps two places below the minor unit. */
  readonly price: (value: DecimalLike) => string;
  /** A fraction: "0.075" is 7.5 %. */
  readonly percent: (fraction: DecimalLike) => string;
  /** "4", "2 pieces", "32.5 bd ft". */
  readonly quantity: (value: DecimalLike, unit: Unit) => string;
  /** A length in mm, in the workshop's system. */
  readonly length: (mm: DecimalLike) => string;
  /** Length, width and height in mm: "1200 × 450 × 460 mm". */
  readonly size: (mm: readonly DecimalLike[]) => string;
  /** An ISO 8601 day: "November 25, 2026" in en-US. */
  readonly date: (day: string) => string;
}

export function paperWriters(style: PaperStyle): PaperWriters {
  const { locale, currency, lengths } = style;
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  const length = (mm: DecimalLike) =>
    noBreak(formatLength(mm, lengths, { tolerance: '0.4' }).replace(MARK_OF_MINUS, '\u2212'));
  return {
    money: (value) => noBreak(formatMoney(value, currency, { locale })),
    price: (value) => noBreak(formatRate(value, currency, { locale })),
    percent: (fraction) => noBreak(formatPercent(fraction, 3, { locale })),
    quantity: (value, unit) => {
      const read = decimal(value);
      const number = formatNumber(read, placesOf(unit), { locale });
      const words = unit === 'each' ? '' : unitWords(unit);
      const counted = COUNTED.has(unit) && !read.abs().eq(1) ? `${words}s` : words;
      return noBreak(`${number} ${counted}`.trim());
    },
    length,
    size: (mm) => {
      const written = mm.map(length);
      // One "mm" after the last says it for all; inches carry their mark each.
      const parts =
        lengths === 'metric'
          ? written.map((one, at) => (at < written.length - 1 ? one.replace('\u00a0mm', '') : one))
          : written;
      return parts.join('\u00a0×\u00a0');
    },
    date: (day) => noBreak(days.format(readDay('date', day))),
  };
}
