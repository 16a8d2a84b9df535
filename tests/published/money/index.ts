import * as amounts from './amounts.ts';
import * as documents from './documents.ts';

/** Who runs a check, by the name in its "function". */
export const MONEY_RUNNERS = {
  'money/round-to-minor-unit': amounts.roundRunner,
  'money/minor-units': amounts.minorUnitsRunner,
  'money/markup-and-margin': amounts.markupRunner,
  'money/price-by-markup': amounts.priceByMarkupRunner,
  'money/capital-recovery-factor': amounts.capitalRecoveryRunner,
  'money/annuity-present-value': amounts.presentValueRunner,
  'money/future-value': amounts.futureValueRunner,
  'money/exclusive-totals': documents.exclusiveTotalsRunner,
  'money/sales-tax': documents.salesTaxRunner,
};
