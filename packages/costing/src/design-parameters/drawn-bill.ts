import type {
  Assembly,
  Bill,
  Component,
  Consumable,
  EdgeBand,
  FinishStep,
  Operation,
  Part,
  Veneer,
} from '../bill-of-materials/index.ts';
import type { Formula } from './formula.ts';
import type { Parameter, Variant } from './parameter.ts';

/** A row whose named fields may be worked out by a formula. */
type WithFormulas<Row, Field extends keyof Row> = {
  [Key in keyof Row]: Key extends Field ? Row[Key] | Formula : Row[Key];
};

export type DrawnAssembly = WithFormulas<Assembly, 'quantity'>;
export type DrawnEdgeBand = WithFormulas<EdgeBand, 'thickness'>;
export type DrawnVeneer = WithFormulas<Veneer, 'thickness'>;
export type DrawnPart = WithFormulas<
  Omit<Part, 'edgeBand' | 'veneer'>,
  'quantity' | 'length' | 'width' | 'thickness' | 'lengthAllowance' | 'widthAllowance' | 'staves' | 'spares'
> & { readonly edgeBand?: DrawnEdgeBand; readonly veneer?: DrawnVeneer };
export type DrawnComponent = WithFormulas<Component, 'quantity'>;
export type DrawnFinishStep = WithFormulas<FinishStep, 'coats' | 'dryFilmUm' | 'batchRest'>;
export type DrawnConsumable = WithFormulas<Consumable, 'quantity'>;
export type DrawnOperation = WithFormulas<
  Operation,
  'setupHours' | 'runHours' | 'runHoursLow' | 'runHoursHigh' | 'elapsedHours'
>;

/**
 * A bill of materials as drawn: its numbers may be formulas, and its materials may name a parameter. Every bill is
 * a drawn bill.
 */
export interface DrawnBill {
  readonly assemblies: readonly DrawnAssembly[];
  readonly parts: readonly DrawnPart[];
  readonly components: readonly DrawnComponent[];
  readonly finishes: readonly DrawnFinishStep[];
  readonly consumables: readonly DrawnConsumable[];
  readonly operations: readonly DrawnOperation[];
}

/** A design as drawn, before anything is chosen. */
export interface DrawnDesign {
  readonly bill: DrawnBill;
  readonly parameters: readonly Parameter[];
  readonly variants: readonly Variant[];
}

/** A bill without parameters, as a design. */
export function plainDesign(bill: Bill): DrawnDesign {
  return { bill, parameters: [], variants: [] };
}
