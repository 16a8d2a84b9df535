export * from './effort.ts';
export * from './figure-errors.ts';
export * from './prepare-table.ts';
export * from './recalculate.ts';
export * from './recalculation.ts';
