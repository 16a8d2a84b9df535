export * from './early-price/index.ts';
export { QuotingInputError } from './input-error.ts';
export * from './paper/index.ts';
