import { labourRate, workOutLabourRate } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerLabourRate = handle(labourRate, async ({ body, query }) =>
  workOutLabourRate(body, { withDerivations: query.working }),
);
