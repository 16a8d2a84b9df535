import { expect, it } from 'vitest';
import { addressInput, addressValues } from './postal-address.ts';

it('an address comes back from its form as it was read', () => {
  const address = { lines: ['4 Mill Lane', 'Invented Town'], countryCode: 'SE' };
  expect(addressInput('address', addressValues('address', address))).toEqual(address);
});

it('blank lines and a country that is not given are none', () => {
  const values = { 'to.lines': '\n 4 Mill Lane \n\nInvented Town\n', 'to.countryCode': '' };
  expect(addressInput('to', values)).toEqual({ lines: ['4 Mill Lane', 'Invented Town'], countryCode: null });
});
