import { riskOf, sensitivityOf, solutionOf, whatIfOf } from '@scantling/contracts';

/** The questions that are answered in a thread, because a large table takes its time. */
export const QUESTIONS = {
  whatIf: whatIfOf,
  sensitivity: sensitivityOf,
  solve: solutionOf,
  risk: riskOf,
} as const;

export type QuestionName = keyof typeof QUESTIONS;
export type QuestionOf<Name extends QuestionName> = Parameters<(typeof QUESTIONS)[Name]>[0];
export type AnswerTo<Name extends QuestionName> = ReturnType<(typeof QUESTIONS)[Name]>;

/** One question for the thread. */
export interface CalculationJob<Name extends QuestionName = QuestionName> {
  readonly name: Name;
  readonly question: QuestionOf<Name>;
}

/** An error loses its class and fields on the way out of a thread, so a domain error travels as what it says. */
export type CalculationOutcome =
  | { readonly kind: 'answer'; readonly answer: unknown }
  | {
      readonly kind: 'problem';
      readonly code: string;
      readonly message: string;
      readonly field?: string;
      readonly reason?: string;
      readonly mend?: string;
    };
