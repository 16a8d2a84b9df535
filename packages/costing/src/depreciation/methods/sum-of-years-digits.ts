import { complement, derive, type Figure, increment, number, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../../input-error.ts';
import { aboveSalvage, yearShares } from '../asset.ts';
import type { MethodDefinition } from '../method.ts';
import { monthsShare } from '../months-share.ts';

export interface SumOfYearsDigits {
  readonly name: 'sum-of-years-digits';
}

/**
 * Year k of n takes (n + 1 - k) / (n (n + 1) / 2) of cost less salvage. Where the first year is a part of
 * one, each line takes the rest of one year of use and the start of the next. ODF 1.3 part 4, 6.12.46 SYD
 * for full years.
 */
export const sumOfYearsDigits: MethodDefinition<SumOfYearsDigits> = {
  name: 'sum-of-years-digits',
  label: "sum of years' digits",
  plan(asset) {
    const life = asset.life();
    if (!life.value.isInteger())
      throw new CostingInputError(
        'lifeYears',
        `leaves ${life.value.toString()} years`,
        "enter a whole number of years, or choose another method than sum of years' digits",
      );
    const shares = yearShares(asset, life);
    const years = derive('life in years', 'ratio', 'same', [life]);
    const digits = derive("sum of the years' digits", 'ratio', 'quotient', [
      scale('n (n + 1)', years, increment('n + 1', years)),
      number(2),
    ]);
    const yearOfUse = (used: number): Figure<'money'> => {
      const digit = derive('years of life left', 'ratio', 'difference', [years, number(used)]);
      const part = derive("this year's digit over their sum", 'ratio', 'quotient', [digit, digits]);
      return scale(`year of use ${used + 1}`, asset.depreciable, part);
    };
    const rest = complement('part of a year of use carried over', asset.firstShare);
    return {
      years: shares.length,
      expense: (index, opening) => {
        if (index >= shares.length - 1) return aboveSalvage(opening, asset);
        const begun = scale('start of a year of use', yearOfUse(index), asset.firstShare);
        if (index === 0 || rest.value.isZero()) return begun;
        const ended = scale('rest of the year of use before', yearOfUse(index - 1), rest);
        return sum('two years of use in one line', 'money', [ended, begun]);
      },
      shareOnDisposal: (index, months) => {
        const yearShare = shares[index];
        return yearShare === undefined ? null : monthsShare(yearShare, months);
      },
    };
  },
};
