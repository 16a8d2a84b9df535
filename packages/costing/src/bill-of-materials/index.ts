export * from './bill.ts';
export * from './check-bill.ts';
export * from './compare-bills.ts';
