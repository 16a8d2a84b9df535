import { derive, per } from '@scantling/figures';
import { aboveSalvage, yearShares } from '../asset.ts';
import type { MethodDefinition } from '../method.ts';
import { monthsShare } from '../months-share.ts';

export interface StraightLine {
  readonly name: 'straight-line';
}

/**
 * The same amount each year: (cost - salvage) / life. A part of the first year takes its part of the
 * amount and leaves the rest to one year more. ODF 1.3 part 4, 6.12.45 SLN for full years.
 */
export const straightLine: MethodDefinition<StraightLine> = {
  name: 'straight-line',
  label: 'straight line',
  plan(asset) {
    const life = asset.life();
    const shares = yearShares(asset, life);
    const yearly = per(`${asset.name}: depreciation a year`, asset.depreciable, life);
    return {
      years: shares.length,
      // The last year takes what is left, so that thirds of a cent cannot stay behind.
      expense: (index, opening) => {
        const yearShare = shares[index];
        return yearShare === undefined || index === shares.length - 1
          ? aboveSalvage(opening, asset)
          : derive('a year of depreciation', 'money', 'product', [yearly, yearShare]);
      },
      shareOnDisposal: (index, months) => {
        const yearShare = shares[index];
        return yearShare === undefined ? null : monthsShare(yearShare, months);
      },
    };
  },
};
