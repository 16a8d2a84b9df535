export * from './early-price/index.ts';
export * from './enquiry/index.ts';
export { QuotingInputError } from './input-error.ts';
export * from './invoice/index.ts';
export * from './invoice-paper/index.ts';
export * from './paper/index.ts';
export * from './quote/index.ts';
export * from './quote-paper/index.ts';
export * from './quote-totals/index.ts';
