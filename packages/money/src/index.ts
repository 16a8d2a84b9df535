export * from './currency.ts';
