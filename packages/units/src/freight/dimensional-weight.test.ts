import { describe, expect, it } from 'vitest';
import { billableWeight, dimensionalWeight } from './dimensional-weight.ts';

// Freight forwarders' pages: 30 x 24 x 22 in.
describe('dimensional weight', () => {
  const parcel = dimensionalWeight({ length: 30, width: 24, height: 22 }, 166);

  it('is billed when it is the greater', () => {
    expect(parcel.weight.toString()).toBe('96');
    expect(billableWeight(40, parcel).toString()).toBe('96');
    expect(billableWeight('120.5', parcel).toString()).toBe('120.5');
  });

  it('stays whole when it comes out whole', () => {
    expect(dimensionalWeight({ length: 10, width: 10, height: 10 }, 100).weight.toString()).toBe('10');
  });

  it('names the side that cannot be', () => {
    expect(() => dimensionalWeight({ length: 30, width: 0, height: 22 }, 166)).toThrow('width is 0');
    expect(() => dimensionalWeight({ length: 30, width: 1, height: 22 }, 0)).toThrow('divisor is 0');
  });
});
