/**
 * Thrown when a value given to a calculation cannot be used: names the field (dotted path from the input's
 * root, "cutters.0.lifeHours"), what is wrong with it and how to mend it.
 */
export class CostingInputError extends Error {
  readonly code = 'costing-input';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}: ${mend}`);
    this.name = 'CostingInputError';
  }
}
