import { decimal } from '@scantling/decimals';
import type { PricePolicy } from '../../price/price-policy.ts';
import type { NoticeRule } from './notice.ts';

/** What the price adds to the cost by this policy, where that is nothing; null where it is something or follows otherwise. */
function addsNothing(policy: PricePolicy): string | null {
  switch (policy.kind) {
    case 'margin':
      return decimal(policy.margin).isZero() ? 'a margin of 0 %' : null;
    case 'markup':
      return decimal(policy.markup).isZero() ? 'a markup of 0 %' : null;
    default:
      return null;
  }
}

/** A price that rests on a margin nobody has said, which a new sheet may start with. */
export const noMargin: NoticeRule = (_column, { input }) => {
  const policy = addsNothing(input.terms.policy);
  if (policy === null) return [];
  return [
    {
      kind: 'no-margin',
      weight: 'warning',
      about: 'what new cost sheets start with',
      message: `the price rests on ${policy}: it brings back the costs and nothing beyond them`,
      mend: 'enter a margin or a markup in the terms, and for the sheets to come in the workshop settings',
      record: 'workshop:new-cost-sheet',
    },
  ];
};
