import { quoteTotals, workOutQuoteTotals } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerQuoteTotals = handle(quoteTotals, async ({ body, query }) =>
  workOutQuoteTotals(body, { withDerivations: query.working }),
);
