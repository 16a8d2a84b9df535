export * from './price.ts';
export * from './price-policy.ts';
