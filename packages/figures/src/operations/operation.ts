import type { Decimal } from '@scantling/decimals';

export type Settings = Readonly<Record<string, string>>;

/**
 * One way to work a figure out. The same record evaluates it, words it and writes it as a spreadsheet
 * formula, so that screen, export and re-calculation cannot disagree.
 */
export interface Operation {
  readonly name: string;
  /** The least and the greatest number of inputs. */
  readonly inputs: readonly [least: number, most: number];
  /** What is wrong with the settings, in words that go on from the figure's name; only where it has any. */
  settingsFault?(settings: Settings, inputCount: number): string | undefined;
  /** Values in, value out; units have been checked by the function that built the figure. */
  evaluate(values: readonly Decimal[], settings: Settings): Decimal;
  /** The derivation in words, from the inputs already worded ("32.5 bd ft x 7.80 per bd ft"). */
  phrase(inputs: readonly string[], settings: Settings): string;
  /** The same as a spreadsheet expression (OpenFormula), from cell references or nested expressions. */
  formula(inputs: readonly string[], settings: Settings): string;
}

/** Thrown when an operation has no answer: division by nothing, logarithm of nothing. */
export class NoAnswerError extends Error {
  readonly code = 'no-answer';
  constructor(readonly reason: string) {
    super(reason);
    this.name = 'NoAnswerError';
  }
}

/** The input at `index`; operations are built with the right count, so a gap is a fault of ours. */
export function at<T>(inputs: readonly T[], index: number): T {
  const found = inputs[index];
  if (found === undefined) throw new RangeError(`an operation misses its input ${index + 1}`);
  return found;
}
