/**
 * A number of a design that is worked out: arithmetic over the design's parameters, as its maker wrote it
 * ("length - 2 * leg"). A bare number where a length is wanted is in the design's own unit.
 */
export interface Formula {
  readonly formula: string;
}

/** Longest formula that is read; what a cell holds and a person can check. */
export const MOST_FORMULA_LETTERS = 400;

export function isFormula(value: unknown): value is Formula {
  return typeof value === 'object' && value !== null && 'formula' in value;
}
