export * from './decimal.ts';
export * from './round.ts';
