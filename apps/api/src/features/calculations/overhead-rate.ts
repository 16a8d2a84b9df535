import { overheadRate, workOutOverheadRate } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerOverheadRate = handle(overheadRate, async ({ body, query }) =>
  workOutOverheadRate(body, { withDerivations: query.working }),
);
