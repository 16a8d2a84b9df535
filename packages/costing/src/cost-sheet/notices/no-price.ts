import type { NoticeRule } from './notice.ts';

/** A material nothing prices, so that cost and price leave it out. */
export const noPrice: NoticeRule = ({ unpriced }) =>
  unpriced.map(({ material, why }) => ({
    kind: 'no-price',
    weight: 'missing',
    about: material.code,
    message: `${material.name} (${material.code}) is not in the cost: ${why}`,
    mend: "import or enter a price for it, link a supplier's article to it, choose another date, or enter the exchange rate",
    record: `material:${material.code}`,
  }));
