import { depreciationSchedule, workOutDepreciationSchedule } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerDepreciationSchedule = handle(depreciationSchedule, async ({ body, query }) =>
  workOutDepreciationSchedule(body, { withDerivations: query.working }),
);
