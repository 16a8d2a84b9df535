import { Decimal, type DecimalLike, decimal, roundHalfAway } from '@scantling/decimals';
import { type Currency, minorUnits } from '@scantling/money';
import type { Unit } from '@scantling/units';
import { placesOf, unitWords } from './unit-words.ts';

/** What a figure needs to be written: the parts of a FigureNode that matter here. */
export interface Amount {
  readonly value: DecimalLike;
  readonly unit: Unit;
  readonly currency: Currency | null;
}

export interface WrittenAmount {
  /** The number as written, with the currency where it is money: "$1,245.50". */
  readonly number: string;
  /** The unit beside it, or '' ("bd ft", "per h"). */
  readonly unit: string;
  /** Both in one line, for text and speech. */
  readonly text: string;
}

export interface FormatOptions {
  /** BCP 47; the browser's own where absent. */
  readonly locale?: string;
  /** Every digit there is (up to 12 places) instead of the places of the unit. */
  readonly isFull?: boolean;
  /** Exactly so many decimal places, for columns of one unit; amounts of money keep their minor unit's. */
  readonly places?: number;
}

const FULL_PLACES = 12;
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

/** Intl writes decimal text exactly; a detour over a float would change the 17th digit. */
function write(value: Decimal, format: Intl.NumberFormat): string {
  const text = (value.isZero() ? new Decimal(0) : value).toFixed();
  return isNumericText(text) ? format.format(text).replace('-', '\u2212') : text;
}

interface Places {
  readonly least: number;
  readonly most: number;
}

function digits(value: Decimal, places: Places, options: FormatOptions): Intl.NumberFormatOptions {
  const most = options.isFull ? FULL_PLACES : places.most;
  const needed = Math.min(Math.max(value.decimalPlaces(), places.least), most);
  return { minimumFractionDigits: options.isFull ? needed : places.least, maximumFractionDigits: most };
}

/** An amount of money at its currency's minor unit (ISO 4217), half away from zero. */
export function formatMoney(value: DecimalLike, currency: Currency, options: FormatOptions = {}): string {
  const places = minorUnits(currency);
  const read = decimal(value);
  const rounded = options.isFull ? roundHalfAway(read, FULL_PLACES) : roundHalfAway(read, places);
  return write(
    rounded,
    formatOf(options.locale, {
      style: 'currency',
      currency,
      ...digits(rounded, { least: places, most: places }, options),
    }),
  );
}

/** Money per something keeps up to two places below the minor unit: a screw at 0.0425 is no 0.04. */
function formatRate(value: Decimal, currency: Currency, options: FormatOptions): string {
  const least = options.places ?? minorUnits(currency);
  const most = options.isFull ? FULL_PLACES : (options.places ?? least + 2);
  const rounded = roundHalfAway(value, most);
  return write(
    rounded,
    formatOf(options.locale, {
      style: 'currency',
      currency,
      minimumFractionDigits: least,
      maximumFractionDigits: most,
    }),
  );
}

/** A number with at most `places` decimal places, and at least three significant digits where it is below 1. */
export function formatNumber(value: DecimalLike, places: number, options: FormatOptions = {}): string {
  const read = decimal(value);
  const small = read.isZero() || read.abs().gte(1) ? places : Math.max(places, 2 - read.e);
  const most = options.isFull ? FULL_PLACES : (options.places ?? Math.min(small, 8));
  const least = options.isFull ? 0 : (options.places ?? 0);
  const rounded = roundHalfAway(read, most);
  return write(
    rounded,
    formatOf(options.locale, { minimumFractionDigits: least, maximumFractionDigits: most }),
  );
}

/** A share as percent: "0.125" is 12.5 %. */
export function formatPercent(value: DecimalLike, places = 1, options: FormatOptions = {}): string {
  const rounded = roundHalfAway(decimal(value).times(100), places);
  return `${write(rounded, formatOf(options.locale, { minimumFractionDigits: options.places ?? 0, maximumFractionDigits: places }))}\u00a0%`;
}

/** A figure's value and unit as a maker reads them. @throws NotADecimalError */
export function formatAmount(amount: Amount, options: FormatOptions = {}): WrittenAmount {
  const value = decimal(amount.value);
  const unit = unitWords(amount.unit);
  const number =
    amount.currency === null
      ? formatNumber(value, placesOf(amount.unit), options)
      : amount.unit === 'money'
        ? formatMoney(value, amount.currency, options)
        : formatRate(value, amount.currency, options);
  return { number, unit, text: unit === '' ? number : `${number} ${unit}` };
}
