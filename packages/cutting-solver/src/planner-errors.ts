/** Thrown where too many plans wait already. */
export class CuttingBusyError extends Error {
  readonly code = 'cutting-busy';
  constructor(readonly waiting: number) {
    super(`${waiting} cutting plans are waiting to be made`);
    this.name = 'CuttingBusyError';
  }
}

/** Thrown where no plan was made though the input can be used: an error of ours, not of who asked. */
export class CuttingFailedError extends Error {
  readonly code = 'cutting-failed';
  constructor(text: string, options?: ErrorOptions) {
    super(`The cutting plan could not be made: ${text}`, options);
    this.name = 'CuttingFailedError';
  }
}
