/** Thrown when a value of a quote or paper cannot be used: names the field, what is wrong with it and the mend. */
export class QuotingInputError extends Error {
  readonly code = 'quoting-input';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}: ${mend}`);
    this.name = 'QuotingInputError';
  }
}
