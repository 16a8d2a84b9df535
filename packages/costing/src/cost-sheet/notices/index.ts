import type { SheetContext } from '../sheet-context.ts';
import { belowMinimumOrder } from './below-minimum-order.ts';
import { late } from './late.ts';
import { noActualOverhead } from './no-actual-overhead.ts';
import { noDensity } from './no-density.ts';
import { noMargin } from './no-margin.ts';
import { noPrice } from './no-price.ts';
import type { NoticedColumn, NoticeRule, SheetNotice } from './notice.ts';
import { priceOld } from './price-old.ts';
import { priceRunOut } from './price-run-out.ts';
import { selfHeatingRags } from './self-heating-rags.ts';

export {
  NOTICE_KINDS,
  NOTICE_WEIGHTS,
  type NoticedColumn,
  type NoticeKind,
  type NoticeWeight,
  type SheetNotice,
} from './notice.ts';

/** In the order in which they matter. */
const RULES: readonly NoticeRule[] = [
  noPrice,
  priceRunOut,
  late,
  belowMinimumOrder,
  priceOld,
  noActualOverhead,
  noMargin,
  noDensity,
  selfHeatingRags,
];

/** Everything to know before relying on the sheet; what holds at several numbers of pieces is said once. */
export function sheetNotices(columns: readonly NoticedColumn[], sheet: SheetContext): SheetNotice[] {
  return RULES.flatMap((rule) => {
    const said = new Map<string, SheetNotice>();
    for (const column of columns) {
      for (const notice of rule(column, sheet)) {
        const key = `${notice.about}\n${notice.message}`;
        const before = said.get(key)?.quantities ?? [];
        if (!before.includes(column.quantity))
          said.set(key, { ...notice, quantities: [...before, column.quantity] });
      }
    }
    return [...said.values()];
  });
}
