export * from './dimensional-weight.ts';
