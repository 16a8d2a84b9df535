import { Decimal, type DecimalLike, decimal, roundHalfAway } from '@scantling/decimals';
import { type Figure, input, number, published, scale } from '@scantling/figures';
import { CostingInputError } from '../../input-error.ts';
import type { MethodDefinition } from '../method.ts';

export const RECOVERY_YEARS = [3, 5, 7, 10] as const;
export type RecoveryYears = (typeof RECOVERY_YEARS)[number];

export interface TaxTable {
  readonly name: 'tax-table';
  readonly recoveryYears: RecoveryYears;
  /** 200 % declining balance (table A-1) or 150 % (table A-14). */
  readonly decliningPercent: 200 | 150;
}

const PERCENT_PLACES = 2;

/**
 * One column of the half-year tables of IRS Publication 946, in percent of cost. Each year takes the greater
 * of declining balance and straight line over the recovery period left, is rounded to two decimals, and
 * the ROUNDED figure is carried into the balance; the last year takes what is left, so a column is 100.
 * The 200 % columns were checked against table A-1 (2025); the 150 % ones against table A-14 from memory.
 */
export function halfYearPercents(recoveryYears: number, decliningPercent: DecimalLike): Decimal[] {
  const rate = decimal(decliningPercent).div(100).div(recoveryYears);
  const percents: Decimal[] = [];
  let balance = decimal(100);
  for (let year = 0; year < recoveryYears; year += 1) {
    const used = year === 0 ? decimal(0) : decimal(year).minus('0.5');
    const part = year === 0 ? '0.5' : 1;
    const declining = balance.times(rate);
    const straight = balance.div(decimal(recoveryYears).minus(used));
    const taken = roundHalfAway(Decimal.max(declining, straight).times(part), PERCENT_PLACES);
    percents.push(taken);
    balance = balance.minus(taken);
  }
  return [...percents, balance];
}

/**
 * Yearly shares of cost from a published tax table, half-year convention: half a year in the first and in
 * the last line whatever the month, salvage not counted. In the year of disposal half the line is taken
 * (half-year convention, IRS Publication 946, from memory).
 */
export const taxTable: MethodDefinition<TaxTable> = {
  name: 'tax-table',
  label: 'published tax table (half-year convention)',
  caution: "From a published tax table; how tax treats this asset is your accountant's to say.",
  plan(asset, settings) {
    checkSettings(settings);
    const { recoveryYears, decliningPercent } = settings;
    const table = decliningPercent === 200 ? 'A-1' : 'A-14';
    const shares = halfYearPercents(recoveryYears, decliningPercent).map(
      (percent, index): Figure<'ratio'> =>
        input({
          key: `tax-table/${recoveryYears}-year-${decliningPercent}/${index + 1}`,
          label: `${recoveryYears}-year property, year ${index + 1}`,
          unit: 'ratio',
          value: percent.div(100),
          source: published(`IRS Publication 946 (2025), table ${table}, half-year convention`),
        }),
    );
    return {
      years: shares.length,
      expense: (index, opening) => {
        const yearShare = shares[index];
        return yearShare === undefined ? opening : scale('share of cost', asset.cost, yearShare);
      },
      shareOnDisposal: () => number('0.5', 'half a year in the year of disposal'),
    };
  },
};

function checkSettings({ recoveryYears, decliningPercent }: TaxTable): void {
  if (!RECOVERY_YEARS.includes(recoveryYears))
    throw new CostingInputError(
      'depreciation.recoveryYears',
      `cannot be ${recoveryYears}`,
      `choose ${RECOVERY_YEARS.join(', ')}`,
    );
  if (decliningPercent !== 200 && decliningPercent !== 150)
    throw new CostingInputError(
      'depreciation.decliningPercent',
      `cannot be ${decliningPercent}`,
      'choose 200 or 150',
    );
}
