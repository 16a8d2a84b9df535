/** Thrown where a field of an instance cannot be used. */
export class CuttingInputError extends Error {
  readonly code = 'cutting-input';
  constructor(
    /** Path in the instance: "parts.3.length". */
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}`);
    this.name = 'CuttingInputError';
  }
}

/** Thrown where no plan exists, or none was found: parts that fit nothing, or stock that does not go round. */
export class CuttingImpossibleError extends Error {
  readonly code = 'cutting-impossible';
  constructor(
    readonly field: string,
    readonly reason: string,
    readonly mend: string,
  ) {
    super(`${field} ${reason}`);
    this.name = 'CuttingImpossibleError';
  }
}

/** Thrown where the caller called the search off. */
export class CuttingCancelledError extends Error {
  readonly code = 'cutting-cancelled';
  constructor() {
    super('the search was called off');
    this.name = 'CuttingCancelledError';
  }
}

/** Thrown where a plan does not pass the check: a fault of the program, never of the input. */
export class CuttingPlanRefusedError extends Error {
  readonly code = 'cutting-plan-refused';
  constructor(readonly faults: readonly string[]) {
    super(`the plan does not pass its check: ${faults.slice(0, 3).join('; ')}`);
    this.name = 'CuttingPlanRefusedError';
  }
}
