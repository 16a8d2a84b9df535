export * from './sensitivity.ts';
