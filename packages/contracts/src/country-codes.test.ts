import { expect, it } from 'vitest';
import { COUNTRY_CODES, countryCodeSchema } from './country-codes.ts';

it('are the countries that the Unicode CLDR names', () => {
  // Unicode CLDR, as it stands in the runtime; a code it does not know has no name there.
  const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' });
  expect(COUNTRY_CODES.filter((code) => names.of(code) === undefined)).toEqual([]);
  // ISO 3166-1 has 249 officially assigned codes.
  expect(new Set(COUNTRY_CODES).size).toBe(249);
});

it('are read in any case, and refused with what to write', () => {
  expect(countryCodeSchema.parse(' se ')).toBe('SE');
  expect(countryCodeSchema.safeParse('UK').error?.issues[0]?.message).toBe('is no country code');
});
