import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Tool, ToolDepreciation } from './tool.ts';
import { REGISTER_AMOUNTS, toolRegister } from './tool-register.ts';

const lathe: Tool = {
  id: 'lathe',
  name: 'Lathe',
  acquisition: 'new',
  bookCost: 5000,
  replacementCost: 6000,
  salvage: 500,
  lifeYears: 5,
  lifeHours: 3000,
  hoursPerYear: 300,
  depreciation: { name: 'straight-line' },
  interestRate: '0.04',
  insuranceTaxRate: '0.01',
  floorAreaM2: 2,
  ratedKw: 1,
  load: 1,
  maintenanceShare: '0.5',
  maintenanceByHours: 1,
  cutters: [],
  attached: [],
  firstYear: 2022,
};
const context = { currency: 'EUR' } as const;
const amounts = (tool: Tool, year: number) => {
  const [row] = toolRegister([tool], year, context).rows;
  return row === undefined ? null : REGISTER_AMOUNTS.map((name) => row[name].value.toNumber());
};

describe('the register of tools', () => {
  it('carries book values from year to year, and keeps a tool that is written off', () => {
    expect(amounts(lathe, 2021)).toBeNull();
    expect(amounts(lathe, 2022)).toEqual([0, 5000, 900, 0, 4100]);
    expect(amounts(lathe, 2026)).toEqual([1400, 0, 900, 0, 500]);
    expect(amounts(lathe, 2030)).toEqual([500, 0, 0, 0, 500]);
  });

  it('shows what a disposal took out of the books, and its gain', () => {
    const sold = { ...lathe, disposal: { year: 2024, months: 6, proceeds: 3000 } };
    expect(amounts(sold, 2024)).toEqual([3200, 0, 450, 2750, 0]);
    expect(toolRegister([sold], 2024, context).totals.gain.value.toNumber()).toBe(250);
    expect(amounts(sold, 2025)).toBeNull();
  });

  it('leaves hired tools out by name and gives a given tool a row of nothing', () => {
    const hired: Tool = {
      ...lathe,
      id: 'lift',
      name: 'Lift',
      acquisition: 'hired',
      hire: { by: 'hour', price: 9 },
    };
    const given: Tool = { ...lathe, id: 'saw', name: 'Saw', acquisition: 'given', bookCost: 0 };
    const register = toolRegister([hired, given], 2023, context);
    expect(register.leftOut).toEqual(['Lift']);
    expect(amounts(given, 2023)).toEqual([0, 0, 0, 0, 0]);
    expect(register.note).toContain('accountant');
  });

  it('names the tool and the field that is wrong', () => {
    const { firstYear: _, ...undated } = lathe;
    expect(() => toolRegister([lathe, undated], 2023, context)).toThrow('tools.1.firstYear is missing');
    const wrong = { ...lathe, bookCost: -1 };
    expect(() => toolRegister([wrong], 2023, context)).toThrow('tools.0.bookCost cannot be -1');
  });

  it('balances in every year by every method, and begins where the year before ended', () => {
    const methods: readonly ToolDepreciation[] = [
      { name: 'straight-line' },
      { name: 'declining-balance', factor: 2, hasSwitch: true },
      { name: 'sum-of-years-digits' },
      { name: 'units-of-production', hoursByYear: [200, 400, 900] },
      { name: 'tax-table', recoveryYears: 5, decliningPercent: 200 },
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...methods),
        fc.integer({ min: 500, max: 50_000 }),
        fc.integer({ min: 1, max: 12 }),
        fc.option(fc.integer({ min: 2022, max: 2030 })),
        (depreciation, bookCost, monthsInFirstYear, sold) => {
          const going = sold === null ? {} : { disposal: { year: sold, months: 3, proceeds: 100 } };
          const tool: Tool = { ...lathe, depreciation, bookCost, monthsInFirstYear, ...going };
          let before = 0;
          for (let year = 2022; year <= (sold ?? 2031); year += 1) {
            const [opening = 0, addition = 0, taken = 0, disposed = 0, closing = 0] =
              amounts(tool, year) ?? [];
            expect(opening).toBeCloseTo(before, 8);
            expect(opening + addition - taken - disposed).toBeCloseTo(closing, 8);
            before = closing;
          }
          if (sold !== null) expect(before).toBeCloseTo(0, 8);
        },
      ),
    );
  });
});
