import { describe, expect, it } from 'vitest';
import { PRICING_UNIT_IDS, PRICING_UNITS, type PricingUnit } from './pricing-units/index.ts';
import { packContentNamed, readPricingUnit, UnknownPricingUnitError } from './read-pricing-unit.ts';

describe('readPricingUnit', () => {
  it('reads every name of every unit as that unit, so no name stands for two', () => {
    for (const id of PRICING_UNIT_IDS) {
      const unit: PricingUnit = PRICING_UNITS[id];
      for (const name of [unit.id, unit.label, unit.symbol, unit.code, ...unit.aliases]) {
        expect([name, readPricingUnit(name).id]).toEqual([name, id]);
        expect(readPricingUnit(` USD / ${name.toUpperCase()} `).id).toBe(id);
      }
    }
  });

  it.each(['', 'cord', 'per', '/', 'constructor'])('refuses "%s" and says what can be used', (text) => {
    expect(() => readPricingUnit(text)).toThrow(UnknownPricingUnitError);
    expect(() => readPricingUnit(text)).toThrow(`"${text}" is no pricing unit: use one of bd ft`);
  });

  it('knows no content for other names', () => {
    expect(packContentNamed('constructor')).toBeUndefined();
  });
});
