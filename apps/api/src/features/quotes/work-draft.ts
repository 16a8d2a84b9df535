import {
  draftTotals,
  type QuoteDraft,
  type QuoteMargin,
  type QuoteTotals,
  quoteMargin,
} from '@scantling/quoting';
import type { CostingRecords } from '../cost-sheets/costing-records.ts';
import { type CostedLine, costLines, lineCosts } from './cost-lines.ts';

export interface WorkedDraft {
  readonly costed: readonly CostedLine[];
  readonly totals: QuoteTotals;
  readonly margin: QuoteMargin;
}

/**
 * A draft worked out as of the records' day, with these options and alternates chosen.
 * @throws QuotingInputError naming the field of the draft
 */
export async function workDraft(
  records: CostingRecords,
  draft: QuoteDraft,
  chosen: readonly string[] = [],
): Promise<WorkedDraft> {
  const costed = await costLines(records, draft.lines);
  const sheets = new Map(costed.map(({ lineId, price }) => [lineId, price]));
  const totals = draftTotals(draft, sheets, chosen);
  return { costed, totals, margin: quoteMargin(totals, lineCosts(draft, costed), draft) };
}
