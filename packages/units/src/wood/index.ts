export * from './density.ts';
export * from './movement.ts';
export * from './shrinkage.ts';
export type { Species, ValueStatus } from './species.ts';
export * from './species-table.ts';
