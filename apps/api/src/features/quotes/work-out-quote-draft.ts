import { toWorkedQuote, workOutQuoteDraft } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { dayOf } from './quote-rows.ts';
import { unpricedLines } from './unpriced-lines.ts';
import { workDraft } from './work-draft.ts';

export const answerWorkOutQuoteDraft = handle(workOutQuoteDraft, async ({ body, query, services }) => {
  const { draft, chosen } = body;
  const { totals, margin, costed } = await workDraft(
    new CostingRecords(services.database, dayOf(services.clock())),
    draft,
    chosen,
  );
  const about = { isFrozen: false, currency: draft.currency, unpriced: unpricedLines(costed) };
  return toWorkedQuote(totals, margin, about, { withDerivations: query.working });
});
