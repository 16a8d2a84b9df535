export * from './price-change.ts';
export { PRICE_COLUMNS, type PriceColumn } from './price-columns.ts';
export * from './price-mapping.ts';
export * from './price-row.ts';
export * from './read-number.ts';
export * from './read-price-row.ts';
