import type { MethodDefinition } from '../method.ts';
import { type DecliningBalance, decliningBalance } from './declining-balance.ts';
import { type StraightLine, straightLine } from './straight-line.ts';
import { type SumOfYearsDigits, sumOfYearsDigits } from './sum-of-years-digits.ts';
import { type TaxTable, taxTable } from './tax-table.ts';
import { type UnitsOfProduction, unitsOfProduction } from './units-of-production.ts';

/** The settings of every method, by name. */
export interface DepreciationSettings {
  'straight-line': StraightLine;
  'declining-balance': DecliningBalance;
  'sum-of-years-digits': SumOfYearsDigits;
  'units-of-production': UnitsOfProduction;
  'tax-table': TaxTable;
}

export type DepreciationMethodName = keyof DepreciationSettings;
/** A method chosen, with its settings. */
export type DepreciationMethod = DepreciationSettings[DepreciationMethodName];

/** Every method an asset can be written off by. */
export const DEPRECIATION_METHODS: {
  readonly [Name in DepreciationMethodName]: MethodDefinition<DepreciationSettings[Name]>;
} = {
  'straight-line': straightLine,
  'declining-balance': decliningBalance,
  'sum-of-years-digits': sumOfYearsDigits,
  'units-of-production': unitsOfProduction,
  'tax-table': taxTable,
};
