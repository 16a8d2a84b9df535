import {
  draftTotals,
  type QuoteDraft,
  type QuoteMargin,
  type QuoteTotals,
  quoteMargin,
} from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { type CostedLine, costLines, lineCosts } from './cost-lines.ts';

export interface WorkedDraft {
  readonly costed: readonly CostedLine[];
  readonly totals: QuoteTotals;
  readonly margin: QuoteMargin;
}

/**
 * A draft worked out as of today, with these options and alternates chosen.
 * @throws QuotingInputError naming the field of the draft
 */
export async function workDraft(
  database: Prisma.TransactionClient,
  draft: QuoteDraft,
  today: string,
  chosen: readonly string[] = [],
): Promise<WorkedDraft> {
  const costed = await costLines(database, draft.lines, today);
  const sheets = new Map(costed.map(({ lineId, price }) => [lineId, price]));
  const totals = draftTotals(draft, sheets, chosen);
  return { costed, totals, margin: quoteMargin(totals, lineCosts(draft, costed), draft) };
}
