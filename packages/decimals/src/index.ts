export * from './decimal.ts';
export * from './round.ts';
export * from './sum-of.ts';
export * from './write-decimal.ts';
