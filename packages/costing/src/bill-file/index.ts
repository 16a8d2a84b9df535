export * from './bill-columns.ts';
export * from './bill-mapping.ts';
export * from './place-problem.ts';
export * from './read-bill.ts';
export type { BillRowProblem } from './row-cells.ts';
export { writeBill } from './write-bill.ts';
