import type { OperationName } from '../operations/index.ts';
import { TooMuchWorkError } from './figure-errors.ts';

// Powers and logarithms of 34 digits take some dozens of additions.
const HARD: ReadonlySet<OperationName> = new Set(['power', 'logarithm']);

/** How much a question may still work out, so that a table from outside cannot keep the program busy for ever. */
export class Effort {
  #left: number;

  /** @param most inputs read by operations, each counting once; a power or logarithm counts 50 */
  constructor(most = Number.POSITIVE_INFINITY) {
    this.#left = most;
  }

  /** @throws TooMuchWorkError */
  spend(operation: OperationName, inputs: number): void {
    this.#left -= 1 + inputs + (HARD.has(operation) ? 50 : 0);
    if (this.#left < 0) throw new TooMuchWorkError('this question');
  }
}
