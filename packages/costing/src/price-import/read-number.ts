/**
 * Reads a number as people write it in a price list: currency signs and codes are passed over, thousands may be
 * grouped in threes by the other mark, a space or an apostrophe.
 * @returns decimal text with a point, null when it is no number of 0 or more
 */
export function readNumber(text: string, mark: 'point' | 'comma'): string | null {
  const bare = text.trim().replace(/^(?:\p{Sc}|[A-Z]{3}\b)\s*|\s*(?:\p{Sc}|\b[A-Z]{3})$/gu, '');
  const [whole = '', fraction, ...more] = bare.split(mark === 'point' ? '.' : ',');
  if (more.length > 0 || (fraction !== undefined && !/^\d+$/.test(fraction))) return null;
  const group =
    mark === 'point'
      ? /^\d{1,3}(?:([,\s'’])\d{3})(?:\1\d{3})*$/u
      : /^\d{1,3}(?:([.\s'’])\d{3})(?:\1\d{3})*$/u;
  if (!/^\d*$/.test(whole) && !group.test(whole)) return null;
  const digits = whole.replace(/\D/g, '').replace(/^0+(?=\d)/, '');
  if (digits === '' && fraction === undefined) return null;
  const places = fraction?.replace(/0+$/, '') ?? '';
  return `${digits === '' ? '0' : digits}${places === '' ? '' : `.${places}`}`;
}
