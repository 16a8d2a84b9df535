import { derive, divide, type Figure, increment, number, per, scale, sum } from '@scantling/figures';
import { firstYearShare } from '../depreciation/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { LeafReader } from '../leaf-reader.ts';
import { bookSchedule } from './book-schedule.ts';
import { owningLine, type RateLine } from './rate-line.ts';
import type { RateOptions } from './rate-options.ts';
import type { Tool } from './tool.ts';
import {
  aYear,
  bookInvestment,
  economicLife,
  hoursPerYear,
  type Investment,
  lifeHours,
  perYear,
  replacementInvestment,
} from './tool-figures.ts';

/** What owning costs rest on. */
export interface Owning {
  readonly investment: Investment;
  readonly averageInvestment: Figure<'money'>;
  readonly life: Figure<'year'>;
  readonly lines: readonly RateLine[];
}

/**
 * Owning costs a year: depreciation, interest and insurance and tax on the average investment, over the
 * machine's own productive hours. Average investment by the forestry handbooks (Miyata 1980, USDA Forest
 * Service GTR NC-55): (P - S)(N + 1) / (2N) + S.
 */
export function owningCosts(
  tool: Tool,
  basis: 'book' | 'replacement',
  reader: LeafReader,
  options: RateOptions,
): Owning {
  const investment = basis === 'book' ? bookInvestment(tool, reader) : replacementInvestment(tool, reader);
  const life = economicLife(tool, reader);
  const averageInvestment = average(tool, investment, life, options.averageInvestment ?? 'forestry');
  const hours = hoursPerYear(tool, reader);
  const depreciation =
    basis === 'book'
      ? bookDepreciation(tool, investment, life, reader, options)
      : replacementDepreciation(tool, investment, life, reader);
  const interestRate = reader.read('interestRate', tool.interestRate, {
    label: 'real interest rate a year',
    unit: 'ratio',
    from: 0,
    to: 1,
  });
  const insuranceTaxRate = reader.read('insuranceTaxRate', tool.insuranceTaxRate, {
    label: 'insurance and tax a year, share of average investment',
    unit: 'ratio',
    from: 0,
    to: 1,
  });
  const onAverage = (label: string, rate: Figure<'ratio'>) =>
    aYear(label, scale(`${label} in a year`, averageInvestment, rate));
  const named = (what: string) => `${tool.name}: ${what}`;
  return {
    investment,
    averageInvestment,
    life,
    lines: [
      owningLine(
        { id: 'depreciation', kind: 'depreciation', label: named('depreciation') },
        depreciation,
        hours,
      ),
      owningLine(
        { id: 'interest', kind: 'interest', label: named('interest') },
        onAverage(named('interest'), interestRate),
        hours,
      ),
      owningLine(
        { id: 'insurance', kind: 'insurance', label: named('insurance and tax') },
        onAverage(named('insurance and tax'), insuranceTaxRate),
        hours,
      ),
    ],
  };
}

function average(
  tool: Tool,
  { cost, salvage, depreciable }: Investment,
  life: Figure<'year'>,
  formula: 'forestry' | 'simple',
): Figure<'money'> {
  const label = `${tool.name}: average investment`;
  if (formula === 'simple')
    return derive(label, 'money', 'quotient', [sum('P + S', 'money', [cost, salvage]), number(2)]);
  const years = derive('N', 'ratio', 'same', [life]);
  const bound = derive('(P - S)(N + 1) / (2N)', 'money', 'quotient', [
    scale('(P - S)(N + 1)', depreciable, increment('N + 1', years)),
    scale('2N', number(2), years),
  ]);
  return sum(label, 'money', [bound, salvage]);
}

function replacementDepreciation(
  tool: Tool,
  { depreciable }: Investment,
  life: Figure<'year'>,
  reader: LeafReader,
): Figure<'money/year'> {
  const label = `${tool.name}: depreciation of replacement cost a year`;
  const hours = lifeHours(tool, reader);
  // Prices recover straight line or units of production; tax and accelerated methods stay in the books.
  if (tool.depreciation.name !== 'units-of-production' || hours === null)
    return per(label, depreciable, life);
  return perYear(label, per(`${tool.name}: wear an hour`, depreciable, hours), hoursPerYear(tool, reader));
}

function bookDepreciation(
  tool: Tool,
  { depreciable }: Investment,
  life: Figure<'year'>,
  reader: LeafReader,
  { namedYear, context }: RateOptions,
): Figure<'money/year'> {
  const label = `${tool.name}: depreciation in the books a year`;
  if (namedYear === undefined) {
    if (tool.depreciation.name === 'straight-line') return per(label, depreciable, life);
    throw new CostingInputError(
      'namedYear',
      `is missing, and ${tool.depreciation.name} takes another amount each year`,
      'say which year the rate is for',
    );
  }
  const { years } = bookSchedule(tool, context, reader);
  const first = tool.firstYear ?? 1;
  if (!Number.isInteger(namedYear) || namedYear < first)
    throw new CostingInputError('namedYear', `cannot be ${namedYear}`, `enter a year from ${first} on`);
  const line = years.find(({ year }) => year === namedYear);
  const taken = line?.expense ?? scale('nothing more to write off', depreciable, number(0));
  const year = aYear(`${label} (${namedYear})`, taken);
  // The hours of a whole year stand against it, so what some months wrote off is brought to twelve. Tax tables
  // and hours run have their own first year and know no months.
  const { name } = tool.depreciation;
  const isByMonths = name !== 'tax-table' && name !== 'units-of-production';
  if (!isByMonths || namedYear !== first || tool.monthsInFirstYear === undefined) return year;
  return divide(`${label} (${namedYear}), brought to a whole year`, year, firstYearShare(tool, reader));
}
