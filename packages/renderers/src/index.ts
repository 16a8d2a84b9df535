export * from './papers/index.ts';
export * from './tabular/index.ts';
