import { boardMeasure, workOutBoardMeasure } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerBoardMeasure = handle(boardMeasure, async ({ body, query }) =>
  workOutBoardMeasure(body, { withDerivations: query.working }),
);
