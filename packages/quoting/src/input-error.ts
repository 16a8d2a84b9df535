/**
 * Thrown when a quote cannot be worked out as it is given: names the field (dotted path from the input's root,
 * "lines.2.tax"), what is wrong with it and how to mend it.
 */
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
