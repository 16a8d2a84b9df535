import { leaves, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { machineHourRate } from './machine-hour-rate.ts';
import type { RateOptions } from './rate-options.ts';
import type { RateBasis, Tool } from './tool.ts';

const options: RateOptions = {
  context: { currency: 'EUR' },
  shop: { floorCostPerM2: 60, electricityPerKwh: '0.30' },
};
const planer: Tool = {
  id: 'planer',
  name: 'Planer',
  acquisition: 'new',
  bookCost: 6000,
  replacementCost: 8000,
  salvage: 1000,
  lifeYears: 10,
  lifeHours: 5000,
  hoursPerYear: 400,
  depreciation: { name: 'straight-line' },
  interestRate: '0.04',
  insuranceTaxRate: '0.01',
  floorAreaM2: 4,
  ratedKw: 3,
  load: '0.5',
  maintenanceShare: '0.6',
  maintenanceByHours: '0.5',
  cutters: [],
  attached: [],
};
const rate = (changes: Partial<Tool>, basis: RateBasis = 'replacement', more: Partial<RateOptions> = {}) =>
  machineHourRate({ ...planer, ...changes }, basis, { ...options, ...more });
const hourly = (...given: Parameters<typeof rate>) =>
  Object.fromEntries(rate(...given).lines.map((line) => [line.id, line.perHour.value.toNumber()]));

describe('the machine-hour rate', () => {
  it('recovers replacement: owning over its own hours, and running by the hour', () => {
    // By hand: N = min(10, 5000/400) = 10; (7000 x 11) / 20 + 1000 = 4850.
    const made = rate({});
    expect(made.life?.value.toNumber()).toBe(10);
    expect(made.averageInvestment?.value.toNumber()).toBe(4850);
    expect(hourly({})).toEqual({
      depreciation: 1.75,
      interest: 0.485,
      insurance: 0.12125,
      floor: 0.6,
      power: 0.45,
      maintenance: 1.05,
    });
    expect(made.perHour.value.toString()).toBe('4.45625');
    expect([made.perHour.unit, made.perHour.currency]).toEqual(['money/h', 'EUR']);
  });

  it('lets hours end the life where they come first', () => {
    expect(rate({ hoursPerYear: 1000 }).life?.value.toNumber()).toBe(5);
    expect(rate({ hoursPerYear: 1000, lifeYears: 4 }).life?.value.toNumber()).toBe(4);
  });

  it('takes the simple average where asked', () => {
    expect(rate({}, 'replacement', { averageInvestment: 'simple' }).averageInvestment?.value.toNumber()).toBe(
      4500,
    );
  });

  it('has nothing in the books for a tool that was given, which still wears', () => {
    const given = { acquisition: 'given', bookCost: 0 } as const;
    expect(hourly(given, 'book')).toMatchObject({
      depreciation: 0,
      interest: 0,
      maintenance: 1.05,
      power: 0.45,
    });
    expect(hourly(given)).toEqual(hourly({}));
    expect(() => rate({ acquisition: 'given' }, 'book')).toThrow(
      'bookCost is not 0 for a tool that was given',
    );
  });

  it('writes nothing off a used tool bought below what it will fetch', () => {
    const used = hourly({ acquisition: 'used', bookCost: 800 }, 'book');
    expect(used).toMatchObject({ depreciation: 0, interest: 0.08 });
  });

  it('takes the books of a named year, by any method', () => {
    const books = { depreciation: { name: 'sum-of-years-digits' }, bookCost: 6500, firstYear: 2024 } as const;
    expect(() => rate(books, 'book')).toThrow('namedYear is missing, and sum-of-years-digits takes another');
    expect(hourly(books, 'book', { namedYear: 2025 }).depreciation).toBeCloseTo((5500 * 9) / 55 / 400, 20);
    expect(hourly(books, 'book', { namedYear: 2040 }).depreciation).toBe(0);
    expect(() => rate(books, 'book', { namedYear: 2023 })).toThrow('enter a year from 2024 on');
    const inOctober = { ...books, monthsInFirstYear: 3 };
    expect(hourly(inOctober, 'book', { namedYear: 2024 }).depreciation).toBeCloseTo(
      (5500 * 10) / 55 / 400,
      20,
    );
  });

  it('counts wear by the hour under units of production', () => {
    const worn = { depreciation: { name: 'units-of-production' } } as const;
    expect(hourly(worn).depreciation).toBe(1.4);
    expect(hourly(worn, 'book', { namedYear: 13 }).depreciation).toBe(0.5);
    const { lifeHours: _, ...endless } = planer;
    expect(() => machineHourRate({ ...endless, ...worn }, 'book', { ...options, namedYear: 1 })).toThrow(
      'lifeHours is missing',
    );
  });

  it('costs another hour by what that hour causes', () => {
    expect(hourly({}, 'marginal')).toEqual({ power: 0.45, maintenance: 0.525, depreciation: 0 });
    expect(hourly({ hoursPerYear: 1000 }, 'marginal')).toMatchObject({ depreciation: 1.4 });
    expect(rate({}, 'marginal').owningPerHour.value.isZero()).toBe(true);
  });

  it('costs cutters by their own life, out of the machine where they came with it', () => {
    const blade = {
      id: 'knives',
      name: 'Knives',
      price: 90,
      sharpenings: 5,
      sharpeningPrice: 12,
      lifeHours: 300,
    };
    expect(hourly({ cutters: [blade] })).toMatchObject({ 'cutters/knives': 0.5, depreciation: 1.75 });
    const included = rate({ cutters: [{ ...blade, isInMachineCost: true }] });
    expect(included.investment?.value.toNumber()).toBe(7910);
    expect(() => rate({ cutters: [{ ...blade, lifeHours: 0 }] })).toThrow('cutters.0.lifeHours cannot be 0');
    const dear = { ...blade, price: 9000, isInMachineCost: true };
    expect(() => rate({ cutters: [dear] })).toThrow('replacementCost is less than its cutters cost');
  });

  it('carries what runs along, its owning cost over its own hours', () => {
    const extractor: Tool = {
      ...planer,
      id: 'extractor',
      name: 'Extractor',
      hoursPerYear: 800,
      lifeHours: 10000,
    };
    const alone = machineHourRate(extractor, 'replacement', options);
    const lines = hourly({ attached: [extractor] });
    expect(lines['attached/extractor/owning']).toBe(alone.owningPerHour.value.toNumber());
    expect(lines['attached/extractor/running']).toBe(alone.runningPerHour.value.toNumber());
    expect(hourly({ attached: [extractor] }, 'marginal')).not.toHaveProperty('attached/extractor/owning');
    expect(() => rate({ attached: [{ ...extractor, attached: [planer] }] })).toThrow(
      'attached leads back to "Planer"',
    );
  });

  it('has the hire of a hired tool in place of owning and maintenance', () => {
    const hired = { acquisition: 'hired', hire: { by: 'day', price: 96, hoursPerDay: 6 } } as const;
    expect(hourly(hired)).toEqual({ floor: 0.6, hire: 16, power: 0.45 });
    expect(hourly({ ...hired, hire: { by: 'hour', price: '14.50' } }, 'marginal')).toEqual({
      hire: 14.5,
      power: 0.45,
    });
    expect(() => rate({ acquisition: 'hired' })).toThrow('hire is missing');
    expect(() => rate({ hire: hired.hire })).toThrow('hire is given for a tool that is not hired');
  });

  it('names what is wrong', () => {
    expect(() => rate({ hoursPerYear: 0 })).toThrow('hoursPerYear cannot be 0: enter a number above 0');
    expect(() => rate({ load: 3 })).toThrow('load cannot be 3');
    expect(() => rate({ salvage: 9000 })).toThrow('salvage is above the replacement cost');
  });

  it('adds up: owning and running are the rate, and owning a year is owning an hour over its hours', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<RateBasis>('book', 'replacement', 'marginal'),
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 1000, max: 90_000 }),
        fc.integer({ min: 0, max: 1000 }),
        (basis, hoursPerYear, cost, salvage) => {
          const made = rate({ hoursPerYear, bookCost: cost, replacementCost: cost, salvage }, basis);
          const parts = made.owningPerHour.value.plus(made.runningPerHour.value);
          expect(parts.minus(made.perHour.value).abs().lt('1e-25')).toBe(true);
          const year = made.owningPerHour.value.times(hoursPerYear);
          expect(year.minus(made.owningPerYear.value).abs().lt('1e-25')).toBe(true);
        },
      ),
    );
  });

  it('shows its working down to named leaves, and moves with them', () => {
    const made = rate({});
    const keys = leaves([made.perHour]).map((leaf) => (leaf.how.kind === 'input' ? leaf.how.key : ''));
    expect(keys).toEqual(
      expect.arrayContaining([
        'machine/planer/replacement-cost',
        'machine/planer/load',
        'shop/electricity-per-kwh',
      ]),
    );
    const { ids, figures } = toTable({ rate: made.perHour }, { withDerivations: true });
    expect(recalculate(figures, { 'shop/electricity-per-kwh': '0.40' }).get(ids.rate)?.toString()).toBe(
      '4.60625',
    );
  });
});
