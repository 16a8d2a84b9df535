import { quoteTotals } from '@scantling/contracts';
import { quoteTotals as totalsOf } from '@scantling/quoting';
import type { Runner } from '../costing/runner.ts';
import { scaleLawRunner } from './early-price.ts';
import { invoicesRunner } from './invoices.ts';

const quoteTotalsRunner: Runner = (inputs) => {
  const totals = totalsOf(quoteTotals.body.parse(inputs));
  return {
    lineAmounts: totals.lines.map(({ amount }) => amount.value),
    sumOfLines: totals.sumOfLines.value,
    discount: totals.discount.value,
    taxable: Object.fromEntries(totals.categories.map(({ tax, net }) => [tax.id, net.value])),
    taxes: Object.fromEntries(totals.categories.map(({ tax, taxAmount }) => [tax.id, taxAmount.value])),
    net: totals.net.value,
    tax: totals.tax.value,
    total: totals.total.value,
    schedule: totals.schedule.map(({ amount }) => amount.value),
  };
};

/** Who runs a check, by the name in its "function". */
export const QUOTING_RUNNERS: Readonly<Record<string, Runner>> = {
  'quoting/quote-totals': quoteTotalsRunner,
  'quoting/invoices': invoicesRunner,
  'quoting/scale-law': scaleLawRunner,
};
