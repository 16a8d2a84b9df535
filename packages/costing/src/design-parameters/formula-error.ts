/** What is wrong with a formula; whoever knows the field turns it into a problem of that field. */
export class FormulaError extends Error {
  constructor(
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${reason}: ${mend}`);
    this.name = 'FormulaError';
  }
}

/** A division by 0, which does not matter in the branch of a condition that is not taken. */
export class DividesByZeroError extends FormulaError {
  constructor(divisor: string) {
    super(`divides by 0 (${divisor})`, 'check the parameter it divides by, or ask for it with a condition');
    this.name = 'DividesByZeroError';
  }
}

/** A name whose own value has a problem, which is told there and not again wherever it is used. */
export class UnresolvedNameError extends FormulaError {
  constructor(name: string) {
    super(`rests on "${name}", which has a problem of its own`, `mend "${name}" first`);
    this.name = 'UnresolvedNameError';
  }
}
