import { learningCurve, workOutLearningCurve } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerLearningCurve = handle(learningCurve, async ({ body, query }) =>
  workOutLearningCurve(body, { withDerivations: query.working }),
);
