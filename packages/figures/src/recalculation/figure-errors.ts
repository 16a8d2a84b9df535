/** Thrown when a table points at a figure it does not hold, or a change names one that is no leaf. */
export class UnknownFigureError extends Error {
  readonly code = 'unknown-figure';
  constructor(readonly id: string) {
    super(`there is no such figure: "${id}"`);
    this.name = 'UnknownFigureError';
  }
}

/** Thrown when a table cannot be worked out whatever its values are: a figure rests on itself, or says nonsense. */
export class FigureTableError extends Error {
  readonly code = 'figure-table';
  /** Where it stands in a request that brings its own table. */
  readonly field: string;
  constructor(
    /** The figure's id. */
    readonly id: string,
    readonly reason: string,
  ) {
    super(`the figure "${id}" ${reason}`);
    this.field = `figures.${id}`;
    this.name = 'FigureTableError';
  }
}

/** Thrown when a question would take more work than was allowed for it. */
export class TooMuchWorkError extends Error {
  readonly code = 'too-much-work';
  constructor(readonly what: string) {
    super(`${what} is more than is worked out at once`);
    this.name = 'TooMuchWorkError';
  }
}
