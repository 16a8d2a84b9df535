export * from './allocate.ts';
export * from './amount.ts';
export * from './annuity.ts';
export * from './currency.ts';
export * from './exchange.ts';
export * from './format-money.ts';
export { MoneyInputError } from './input-error.ts';
export * from './markup.ts';
export * from './taxes/index.ts';
