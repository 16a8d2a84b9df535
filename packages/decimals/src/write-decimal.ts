import { Decimal, type DecimalLike, decimal } from './decimal.ts';
import { roundHalfAway } from './round.ts';

export interface NumberStyle {
  /** BCP 47; where absent that of the place the code runs in, such as the reader's browser. */
  readonly locale?: string;
  /** Every digit there is (up to 12 places) instead of the places asked for. */
  readonly isFull?: boolean;
  /** Exactly so many decimal places, for columns of one unit; amounts of money keep their minor unit's. */
  readonly places?: number;
}

/** More places than any number that is shown needs. */
export const FULL_PLACES = 12;
const formats = new Map<string, Intl.NumberFormat>();

function formatOf(locale: string | undefined, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale ?? ''}|${JSON.stringify(options)}`;
  const known = formats.get(key) ?? new Intl.NumberFormat(locale, options);
  formats.set(key, known);
  return known;
}

function isNumericText(text: string): text is Intl.StringNumericLiteral {
  return /^-?\d+(\.\d+)?$/.test(text);
}

/**
 * Writes a decimal as the locale does, with a true minus. Intl writes decimal text exactly; a detour over a float
 * would change the 17th digit.
 */
export function writeDecimal(
  value: Decimal,
  locale: string | undefined,
  options: Intl.NumberFormatOptions,
): string {
  const text = (value.isZero() ? new Decimal(0) : value).toFixed();
  return isNumericText(text) ? formatOf(locale, options).format(text).replace('-', '\u2212') : text;
}

/** A number with at most `places` decimal places, and at least three significant digits where it is below 1. */
export function formatNumber(value: DecimalLike, places: number, style: NumberStyle = {}): string {
  const read = decimal(value);
  const small = read.isZero() || read.abs().gte(1) ? places : Math.max(places, 2 - read.e);
  const most = style.isFull ? FULL_PLACES : (style.places ?? Math.min(small, 8));
  const least = style.isFull ? 0 : (style.places ?? 0);
  return writeDecimal(roundHalfAway(read, most), style.locale, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
  });
}

/** A share as percent: "0.125" is 12.5 %. */
export function formatPercent(value: DecimalLike, places = 1, style: NumberStyle = {}): string {
  const written = writeDecimal(roundHalfAway(decimal(value).times(100), places), style.locale, {
    minimumFractionDigits: style.places ?? 0,
    maximumFractionDigits: places,
  });
  return `${written}\u00a0%`;
}
