import { earlyPrice, workOutEarlyPrice } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerEarlyPrice = handle(earlyPrice, async ({ body, query }) =>
  workOutEarlyPrice(body, { withDerivations: query.working }),
);
