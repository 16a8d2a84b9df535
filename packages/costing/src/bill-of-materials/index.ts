export * from './bill.ts';
export * from './check-bill.ts';
