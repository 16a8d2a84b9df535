export * from './board-feet.ts';
export * from './bundle-tally.ts';
export * from './grades.ts';
export * from './quarters.ts';
export * from './sheet-sizes.ts';
export * from './softwood-sizes.ts';
export * from './surface-measure.ts';
