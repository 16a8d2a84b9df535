import { describe, expect, it } from 'vitest';
import { machineHourRate } from './machine-hour-rate.ts';
import { recoveredByMachines } from './recovered.ts';
import type { Tool } from './tool.ts';

const extractor: Tool = {
  id: 'extractor',
  name: 'Extractor',
  acquisition: 'shop-made',
  bookCost: 500,
  replacementCost: 1000,
  salvage: 0,
  lifeYears: 10,
  hoursPerYear: 500,
  depreciation: { name: 'straight-line' },
  interestRate: 0,
  insuranceTaxRate: 0,
  floorAreaM2: 1,
  ratedKw: 1,
  load: 1,
  maintenanceShare: 0,
  maintenanceByHours: 0,
  cutters: [],
  attached: [],
};
const saw: Tool = { ...extractor, id: 'saw', name: 'Saw', floorAreaM2: 5, ratedKw: 3, attached: [extractor] };

describe('what machine-hour rates recover in a year', () => {
  it('is told by kind of cost, and counts a machine that runs along once', () => {
    const options = {
      context: { currency: 'EUR' },
      shop: { floorCostPerM2: 50, electricityPerKwh: '0.2' },
    } as const;
    const rates = [saw, extractor].map((tool) => machineHourRate(tool, 'replacement', options));
    const found = recoveredByMachines(rates).map(({ kind, perYear }) => [kind, perYear.value.toNumber()]);
    expect(Object.fromEntries(found)).toEqual({
      depreciation: 200,
      interest: 0,
      insurance: 0,
      floor: 300,
      power: 400,
      maintenance: 0,
    });
  });
});
