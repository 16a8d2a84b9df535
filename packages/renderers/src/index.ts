export * from './tabular/index.ts';
