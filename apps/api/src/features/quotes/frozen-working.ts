import {
  drawingFields,
  toWorkedCostSheet,
  toWorkedQuote,
  type WorkedQuote,
  workedCostSheetSchema,
  workedQuoteSchema,
} from '@scantling/contracts';
import type { CostSheetInput } from '@scantling/costing';
import { type FigureTable, input } from '@scantling/figures';
import {
  type ClientDocument,
  documentTotals,
  type LineCost,
  type QuoteDraft,
  quoteMargin,
} from '@scantling/quoting';
import { z } from 'zod';
import { lineCosts, sheetAskSchema } from './cost-lines.ts';
import type { WorkedDraft } from './work-draft.ts';

/** What was asked of a line's cost sheet, its drawing, and the sheet as it was worked out. */
export const frozenSheetSchema = z.object({
  ask: sheetAskSchema,
  drawing: z.object(drawingFields),
  unit: z.enum(['mm', 'in']),
  worked: workedCostSheetSchema,
});

/**
 * What is kept of our figures when a quote is sent: of each line from a design what was asked, the drawing, and the whole
 * worked-out sheet; of every line what it costs us and what must be bought for it; totals and margin.
 */
const frozenWorkingSchema = z.object({
  sheets: z.record(z.string(), frozenSheetSchema),
  costs: z.record(
    z.string(),
    z.object({
      cost: z.string().nullable(),
      bought: z.string(),
      owner: z.object({ hours: z.string(), labour: z.string() }).nullable().default(null),
    }),
  ),
  quote: workedQuoteSchema,
});
export type FrozenWorking = z.output<typeof frozenWorkingSchema>;

function drawingOf({ bill, parameters = [], variants = [] }: CostSheetInput) {
  return { bill, parameters, variants };
}

export function freezeWorking(draft: QuoteDraft, worked: WorkedDraft): FrozenWorking {
  const costs = lineCosts(draft, worked.costed);
  return {
    sheets: Object.fromEntries(
      worked.costed.map(({ lineId, ask, sheet }) => [
        lineId,
        {
          ask,
          drawing: drawingOf(sheet.input),
          unit: sheet.input.lengthUnit ?? 'mm',
          worked: toWorkedCostSheet(sheet, { withDerivations: true }),
        },
      ]),
    ),
    costs: Object.fromEntries(
      [...costs].map(([id, { cost, bought, owner }]) => [
        id,
        {
          cost: cost?.value.toString() ?? null,
          bought: bought.value.toString(),
          owner:
            owner === undefined
              ? null
              : { hours: owner.hours.value.toString(), labour: owner.labour.value.toString() },
        },
      ]),
    ),
    quote: toWorkedQuote(
      worked.totals,
      worked.margin,
      { isFrozen: true, currency: draft.currency },
      { withDerivations: true },
    ),
  };
}

export function readFrozenWorking(kept: unknown): FrozenWorking {
  return frozenWorkingSchema.parse(kept);
}

/** The frozen costs of every line, as figures again. */
export function frozenCosts(document: ClientDocument, frozen: FrozenWorking): Map<string, LineCost> {
  const costs = new Map<string, LineCost>();
  for (const { id, description } of document.lines) {
    const kept = frozen.costs[id];
    if (kept === undefined) continue;
    const ask = frozen.sheets[id]?.ask;
    const source =
      ask === undefined
        ? ({ kind: 'entered', text: 'entered in the quote' } as const)
        : ({
            kind: 'cost-sheet',
            text: `cost sheet "${ask.title}" as it was when this was sent`,
            record: `cost-sheet:${ask.costSheetId}`,
          } as const);
    const leaf = (name: string, label: string, value: string) =>
      input({
        key: `line/${id}/${name}`,
        label: `${description}: ${label}`,
        unit: 'money',
        value,
        currency: document.currency,
        source,
      });
    const hoursLeaf = (value: string) =>
      input({
        key: `line/${id}/owner-hours`,
        label: `${description}: the owner's hours`,
        unit: 'h',
        value,
        source,
      });
    costs.set(id, {
      cost: kept.cost === null ? null : leaf('cost', 'cost of production', kept.cost),
      bought: leaf('bought', 'what must be bought', kept.bought),
      owner:
        kept.owner === null
          ? undefined
          : {
              hours: hoursLeaf(kept.owner.hours),
              labour: leaf('owner-labour', "the owner's labour", kept.owner.labour),
            },
    });
  }
  return costs;
}

/** What is kept when a sent quote is accepted: our figures with what was chosen. */
export function acceptedQuote(
  document: ClientDocument,
  frozen: FrozenWorking,
  chosen: readonly string[],
): WorkedQuote {
  const totals = documentTotals(document, chosen);
  const margin = quoteMargin(totals, frozenCosts(document, frozen), document);
  const about = { isFrozen: true, currency: document.currency };
  return toWorkedQuote(totals, margin, about, { withDerivations: true });
}

/** A kept table, with its derivations or with values alone. */
export function withWorking<T extends { figures: FigureTable }>(kept: T, hasWorking: boolean): T {
  if (hasWorking) return kept;
  const bare = Object.entries(kept.figures).map(([id, { how: _, ...node }]) => [id, node] as const);
  return { ...kept, figures: Object.fromEntries(bare) };
}
