export * from './solve.ts';
export type * from './solve-question.ts';
