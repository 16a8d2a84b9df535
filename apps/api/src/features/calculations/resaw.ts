import { resaw, workOutResaw } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerResaw = handle(resaw, async ({ body, query }) =>
  workOutResaw(body, { withDerivations: query.working }),
);
