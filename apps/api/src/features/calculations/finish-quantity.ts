import { finishQuantity, workOutFinishQuantity } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerFinishQuantity = handle(finishQuantity, async ({ body, query }) =>
  workOutFinishQuantity(body, { withDerivations: query.working }),
);
