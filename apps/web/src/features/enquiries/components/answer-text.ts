import type { WorkedEarlyPrice } from '@scantling/contracts';
import { formatMoney } from '../../../lib/format.ts';

/** What can be told to whoever asked: the range, and that it is no offer. No cost in it. */
export function answerText(worked: WorkedEarlyPrice, locale: string): string {
  const amount = (id: string) => formatMoney(worked.figures[id]?.value ?? '0', worked.currency, { locale });
  return (
    `From pieces of ours that were alike it will come to between ${amount(worked.low.price)} and ` +
    `${amount(worked.high.price)}. This is an early price before drawing; it is not an offer.`
  );
}
