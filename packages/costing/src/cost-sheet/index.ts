export type { CostClasses, Hours } from './cost-classes.ts';
export { type CostColumn, type CostSheet, costSheet } from './cost-sheet.ts';
export * from './cost-sheet-input.ts';
export type { FreightLine } from './freight-lines.ts';
export { type EnteredLeaf, type LeafEntry, leafEntry, leafValueProblem } from './leaf-entry.ts';
export type { MaterialLine, UnpricedMaterial } from './material-lines.ts';
export type { MaterialClass } from './material-use.ts';
export {
  NOTICE_KINDS,
  NOTICE_WEIGHTS,
  type NoticeKind,
  type NoticeWeight,
  type SheetNotice,
} from './notices/index.ts';
export type { PartNeed } from './part-need.ts';
export { needUnits, priceOfMaterial } from './price-of-material.ts';
export type { WorkLine } from './work-lines.ts';
