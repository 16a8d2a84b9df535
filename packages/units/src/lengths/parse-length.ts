import { type Decimal, decimal, roundHalfAway, ZERO } from '@scantling/decimals';
import { UnreadableLengthError } from './unreadable-length-error.ts';

/** The unit a field shows its lengths in, which a bare number takes. */
export type LengthUnit = 'mm' | 'in';

/** Places kept of a millimetre: 1/64 in is 0.396875 mm exactly, so every inch fraction of the trade survives. */
export const LENGTH_PLACES = 6;

const MM_PER = { mm: '1', cm: '10', m: '1000', in: '25.4', ft: '304.8' } as const;
type WrittenUnit = keyof typeof MM_PER;

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  '"': 'in',
  in: 'in',
  'in.': 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  'ft.': 'ft',
  foot: 'ft',
  feet: 'ft',
};

/** Single fraction characters, as word processors make them of "1/2". */
const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

// A whole number with a fraction ("23 5/8", "23-5/8"), a fraction alone, or a decimal with point or comma.
const NUMBER = String.raw`(?:\d+(?:\s*-\s*|\s+)\d+\s*/\s*\d+|\d+\s*/\s*\d+|\d+(?:[.,]\d+)?|[.,]\d+)`;
const TERM = new RegExp(String.raw`^(${NUMBER})\s*("|'|[a-z]+\.?)?\s*`);

/** Straight marks for typographic ones, fractions spelled out, small letters, one kind of space. */
function plain(text: string): string {
  return text
    .replace(/''|[″”“„〃]|′′|’’/g, '"')
    .replace(/[′’‘ʹ]/g, "'")
    .replace(/⁄|∕/g, '/')
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${FRACTION_SIGNS[sign] ?? ''}`)
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

function readNumber(written: string, text: string): Decimal {
  const mixed = /^(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/.exec(written);
  if (mixed === null) return decimal(written.replace(',', '.').replace(/^\./, '0.'));
  const [, whole = '0', numerator = '0', denominator = '0'] = mixed;
  if (decimal(denominator).isZero()) throw new UnreadableLengthError(text, 'a fraction over 0');
  return decimal(whole).plus(decimal(numerator).div(denominator));
}

/** "1,250" could be 1.25 or 1250; only a comma with one, two or four and more digits behind is a decimal comma. */
function refuseAmbiguousComma(written: string, text: string): void {
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) {
    throw new UnreadableLengthError(
      text,
      'a comma before three digits can be read two ways, use a point or none',
    );
  }
}

interface Term {
  readonly value: Decimal;
  readonly unit: WrittenUnit | undefined;
}

function readTerms(text: string): Term[] {
  const terms: Term[] = [];
  let rest = plain(text);
  if (/^-\s*[\d.,]/.test(rest)) throw new UnreadableLengthError(text, 'a length cannot be negative');
  while (rest !== '') {
    const match = TERM.exec(rest);
    if (match === null) throw new UnreadableLengthError(text, `"${rest}" is no number`);
    const [whole, written = '', word] = match;
    const unit = word === undefined ? undefined : UNIT_WORDS[word];
    if (word !== undefined && unit === undefined) throw new UnreadableLengthError(text, `no unit "${word}"`);
    refuseAmbiguousComma(written, text);
    terms.push({ value: readNumber(written, text), unit });
    if (terms.length > 2) throw new UnreadableLengthError(text, 'too many numbers');
    // A dash may stand between feet and inches: 1'-11 5/8".
    rest = rest.slice(whole.length).replace(/^-\s*(?=[\d.,])/, unit === 'ft' ? '' : '-');
  }
  return terms;
}

/**
 * Reads a length as people write it: `23 5/8`, `23-5/8"`, `1' 11 5/8"`, `600`, `600 mm`, `60cm`, `0.75in`,
 * with straight or typographic primes and decimal point or comma. A bare number takes the displayed unit.
 * @returns millimetres, rounded half away from zero to six places
 * @throws UnreadableLengthError
 */
export function parseLength(text: string, displayedUnit: LengthUnit): Decimal {
  const terms = readTerms(text);
  const [first, second] = terms;
  if (first === undefined) throw new UnreadableLengthError(text, 'it is empty');
  if (second === undefined) return toMm(first.value, first.unit ?? displayedUnit);
  const secondUnit = second.unit ?? 'in';
  if (first.unit !== 'ft' || secondUnit !== 'in') {
    throw new UnreadableLengthError(text, 'only feet and inches can stand together');
  }
  if (second.value.gte(12)) throw new UnreadableLengthError(text, '12 inches or more beside feet');
  return toMm(first.value, 'ft').plus(toMm(second.value, 'in'));
}

function toMm(value: Decimal, unit: WrittenUnit): Decimal {
  return roundHalfAway(value.isZero() ? ZERO : value.times(MM_PER[unit]), LENGTH_PLACES);
}
