export type { CategoryTotals } from './category-totals.ts';
export { countedLines } from './counted-lines.ts';
export { type QuoteTotals, quoteTotals, type TotalledLine } from './quote-totals.ts';
export * from './totals-input.ts';
