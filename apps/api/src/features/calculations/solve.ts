import { solve } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerSolve = handle(solve, ({ body, services, request }) =>
  services.calculations.ask('solve', body, request),
);
