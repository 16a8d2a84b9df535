export * from './check-codes.ts';
export * from './drawn-bill.ts';
export * from './formula.ts';
export * from './material-codes.ts';
export * from './parameter.ts';
export * from './rename-in-formula.ts';
export * from './size-design.ts';
export type { SizedParameter } from './size-parameters.ts';
