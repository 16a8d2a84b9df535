import { Effort } from '@scantling/figures';
import { type CalculationJob, type CalculationOutcome, QUESTIONS } from './calculation-job.ts';

/** About three seconds of decimals on a slow machine. */
const MOST_WORK = 4_000_000;

function textOf(error: object, name: string): string | undefined {
  const value: unknown = Reflect.get(error, name);
  return typeof value === 'string' ? value : undefined;
}

/** What a thread of the pool runs: one question, answered without pause. */
export function answerQuestion({ name, question }: CalculationJob): CalculationOutcome {
  // A job's question is of the kind its name tells; the union of both is more than the compiler follows.
  const answer = QUESTIONS[name] as (asked: unknown, effort: Effort) => unknown;
  try {
    return { kind: 'answer', answer: answer(question, new Effort(MOST_WORK)) };
  } catch (error) {
    const code = error instanceof Error ? textOf(error, 'code') : undefined;
    if (!(error instanceof Error) || code === undefined) throw error;
    const said = ['field', 'reason', 'mend'].map((name) => [name, textOf(error, name)]);
    return { kind: 'problem', code, message: error.message, ...Object.fromEntries(said) };
  }
}
