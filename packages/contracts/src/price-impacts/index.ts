export * from './decide-price-impact.ts';
export * from './get-price-impact.ts';
export * from './list-price-impact-rows.ts';
export * from './list-price-impacts.ts';
export * from './price-impact.ts';
export * from './work-out-price-impact.ts';
