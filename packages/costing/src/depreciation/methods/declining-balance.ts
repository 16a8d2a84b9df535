import type { DecimalLike } from '@scantling/decimals';
import { derive, type Figure, greatest, least, scale } from '@scantling/figures';
import { aboveSalvage, yearShares } from '../asset.ts';
import type { MethodDefinition } from '../method.ts';
import { monthsShare } from '../months-share.ts';

export interface DecliningBalance {
  readonly name: 'declining-balance';
  /** 2 is double declining, 1.5 is 150 %. */
  readonly factor: DecimalLike;
  /** Take straight line over the life that is left as soon as that is more. */
  readonly hasSwitch: boolean;
}

/**
 * The same share of the opening book value each year, factor / life, stopping at salvage. With the switch,
 * the greater of that and straight line over what is left of the life. ODF 1.3 part 4, 6.12.14 DDB and
 * 6.12.50 VDB for full years.
 */
export const decliningBalance: MethodDefinition<DecliningBalance> = {
  name: 'declining-balance',
  label: 'declining balance',
  plan(asset, settings) {
    const life = asset.life();
    const shares = yearShares(asset, life);
    const factor = asset.reader.read('depreciation.factor', settings.factor, {
      label: 'declining-balance factor',
      unit: 'ratio',
      above: 0,
    });
    const rate = derive(`${asset.name}: share of book value a year`, 'ratio', 'quotient', [factor, life]);
    const straightLine = (index: number, left: Figure<'money'>, yearShare: Figure<'ratio'>) => {
      const used = derive('years in use so far', 'ratio', 'sum', shares.slice(0, index));
      const ahead = derive('life left', 'ratio', 'difference', [life, used]);
      return derive('straight line over the life left', 'money', 'quotient', [
        scale('book value above salvage, for the part of the year', left, yearShare),
        ahead,
      ]);
    };
    return {
      years: shares.length,
      expense: (index, opening) => {
        const left = aboveSalvage(opening, asset);
        const yearShare = shares[index];
        if (yearShare === undefined || (settings.hasSwitch && index === shares.length - 1)) return left;
        const declining = scale('declining balance', opening, rate, yearShare);
        const most = settings.hasSwitch
          ? greatest(
              'the greater of declining balance and straight line',
              declining,
              straightLine(index, left, yearShare),
            )
          : declining;
        return least('not below salvage', most, left);
      },
      shareOnDisposal: (index, months) => {
        const yearShare = shares[index];
        return yearShare === undefined ? null : monthsShare(yearShare, months);
      },
    };
  },
};
