export { type AgreedPart, orderedLines } from './agreed-part.ts';
export * from './balance.ts';
export * from './invoice-document.ts';
export * from './issued-paper.ts';
export { checkNetRule, offNetRule } from './net-rule.ts';
export { statedRows, type TaxedAmount, type TaxRow } from './taxed-amount.ts';
export * from './work-out-credit.ts';
export * from './work-out-invoice.ts';
