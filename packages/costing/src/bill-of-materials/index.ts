export * from './bill.ts';
export * from './bill-problem.ts';
