import { roundToMinorUnit } from '@scantling/money';
import { termAtCost } from '../../price-list/index.ts';
import type { NoticeRule } from './notice.ts';

/** An order that comes to less than its supplier takes. */
export const belowMinimumOrder: NoticeRule = ({ orders }, sheet) =>
  orders.flatMap(({ supplier, cost }) => {
    const least = termAtCost(supplier, 'minimumOrder');
    if (least === null || cost.value.gte(least.value)) return [];
    const { currency } = sheet.input;
    const amount = (value: typeof cost.value) => `${roundToMinorUnit(value, currency).toFixed()} ${currency}`;
    return [
      {
        kind: 'below-minimum-order' as const,
        weight: 'warning' as const,
        about: supplier.code,
        message: `${supplier.name} takes orders from ${amount(least.value)}; this one comes to ${amount(cost.value)}`,
        mend: 'order together with other work, choose another supplier, or charge the difference',
        record: `supplier:${supplier.code}`,
      },
    ];
  });
