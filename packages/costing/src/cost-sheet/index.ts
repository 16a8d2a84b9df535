export type { CostClasses, Hours } from './cost-classes.ts';
export { type CostColumn, type CostSheet, costSheet } from './cost-sheet.ts';
export * from './cost-sheet-input.ts';
export type { MaterialLine } from './material-lines.ts';
export type { MaterialClass } from './material-use.ts';
export type { PartNeed } from './part-need.ts';
export type { WorkLine } from './work-lines.ts';
