export { canonicalText } from './canonical-text.ts';
export * from './client-document.ts';
export { draftTotals, type SheetPrice } from './draft-totals.ts';
export { lineUnit, quantityText, unitAfter } from './line-unit.ts';
export * from './quote-draft.ts';
export { type LineCost, type QuoteMargin, quoteMargin } from './quote-margin.ts';
export * from './quote-state.ts';
