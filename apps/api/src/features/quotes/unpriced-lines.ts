import type { WorkedQuote } from '@scantling/contracts';
import { type QuoteDraft, QuotingInputError } from '@scantling/quoting';
import type { CostedLine } from './cost-lines.ts';

type UnpricedLine = WorkedQuote['unpriced'][number];

/** The lines whose cost sheet leaves out a material that nothing prices, so that their price is too low. */
export function unpricedLines(costed: readonly CostedLine[]): UnpricedLine[] {
  return costed.flatMap(({ lineId, ask: { costSheetId, title }, column }) =>
    column.unpriced.length === 0
      ? []
      : [
          {
            lineId,
            costSheetId,
            title,
            materials: column.unpriced.map(({ material: { code, name }, why }) => ({ code, name, why })),
          },
        ],
  );
}

/** What is missing, for a sentence: "Ash 4/4 (ASH-4): no supplier has a price for it". */
export function missingPrices(materials: UnpricedLine['materials']): string {
  return materials.map(({ code, name, why }) => `${name} (${code}): ${why}`).join('; ');
}

export const MISSING_PRICE_MEND = 'import or enter a price for it, or choose another date of the cost sheet';

/**
 * Refuses to let a price that is too low leave the house; options and alternates count, since the client reads them.
 * @throws QuotingInputError naming the first such line, its sheet and the materials
 */
export function requirePriced({ lines }: QuoteDraft, costed: readonly CostedLine[]): void {
  const [unpriced] = unpricedLines(costed);
  if (unpriced === undefined) return;
  const at = lines.findIndex(({ id }) => id === unpriced.lineId);
  throw new QuotingInputError(
    `lines.${at}.costSheetId`,
    `names "${unpriced.title}", whose price is too low (${missingPrices(unpriced.materials)})`,
    MISSING_PRICE_MEND,
  );
}
