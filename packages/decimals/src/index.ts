export * from './decimal.ts';
export * from './round.ts';
export * from './write-decimal.ts';
