export * from './delivery-paper.ts';
export * from './invoice-paper.ts';
export * from './paper-mail.ts';
export * from './receipt-paper.ts';
export { taxRoundingWords } from './tax-rounding.ts';
