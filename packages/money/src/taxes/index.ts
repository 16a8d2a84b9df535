export {
  type CategoryTax,
  type DocumentAdjustment,
  type DocumentTotals,
  type ExclusiveDocument,
  type ExclusiveLine,
  exclusiveTotals,
} from './exclusive-totals.ts';
export * from './inclusive-totals.ts';
export * from './purchase-tax.ts';
export * from './sales-tax.ts';
export * from './tax-category.ts';
