export * from './derive.ts';
export * from './figure.ts';
export * from './input.ts';
export * from './operations/index.ts';
export { NoAnswerError } from './operations/operation.ts';
export * from './recalculate.ts';
export * from './source.ts';
export * from './table.ts';
export * from './walk.ts';
