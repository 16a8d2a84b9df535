import { quoteDraftSchema } from '@scantling/contracts';
import { type CostColumn, costSheet } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';
import { QuotingInputError } from '@scantling/quoting';
import { findCostSheet } from '../cost-sheets/cost-sheet-records.ts';
import type { CostingRecords } from '../cost-sheets/costing-records.ts';
import { gatherFrom } from '../cost-sheets/gather-input.ts';
import { costAsk, isOfCosting } from '../quotes/cost-lines.ts';
import type { FrozenAsks } from '../quotes/frozen-asks.ts';
import { missingPrices, unpricedLines } from '../quotes/unpriced-lines.ts';
import { workDraft } from '../quotes/work-draft.ts';

/** Everything as it is with the list, and as it would be had the list never come. */
export interface Sides {
  readonly withList: CostingRecords;
  readonly withoutList: CostingRecords;
}

export interface TouchedMoney {
  readonly currency: string;
  readonly costBefore: string;
  readonly costAfter: string;
  readonly priceBefore: string;
  readonly priceAfter: string;
}

/** What a list does to one quote or cost sheet, or why that cannot be told. */
export type CostedTouched = TouchedMoney | { readonly problem: string };

// As the columns keep them.
const PLACES = 6;

const text = (figure: Figure): string => figure.value.toFixed(PLACES);

/** A sent quote: its price stands, and the lines that count are costed again with the list. */
async function costSent(frozen: FrozenAsks, { withList }: Sides): Promise<CostedTouched> {
  const { currency, cost: costBefore, net } = frozen;
  let costAfter = decimal(costBefore);
  for (const { lineId, ask, cost, ...kept } of frozen.lines) {
    const sheet = await costAsk(withList, { ...ask, onDate: withList.today }, kept);
    const [column] = sheet.columns;
    if (column === undefined) throw new RangeError('a cost sheet has a column for its number of pieces');
    const [unpriced] = column.unpriced;
    if (unpriced !== undefined)
      return { problem: `${unpriced.material.name} has no price (line ${lineId}): ${unpriced.why}` };
    costAfter = costAfter.plus(column.classes.costOfProduction.value).minus(cost);
  }
  const price = decimal(net).toFixed(PLACES);
  return {
    currency,
    costBefore: decimal(costBefore).toFixed(PLACES),
    costAfter: costAfter.toFixed(PLACES),
    priceBefore: price,
    priceAfter: price,
  };
}

/** A draft follows its cost sheets, so its price may move too. */
async function costDraft(given: unknown, { withList, withoutList }: Sides): Promise<CostedTouched> {
  const draft = quoteDraftSchema.parse(given);
  const [was, now] = [await workDraft(withoutList, draft), await workDraft(withList, draft)];
  for (const { costed } of [was, now]) {
    const [unpriced] = unpricedLines(costed);
    if (unpriced !== undefined) return { problem: `${unpriced.title}: ${missingPrices(unpriced.materials)}` };
  }
  return {
    currency: draft.currency,
    costBefore: text(was.margin.cost),
    costAfter: text(now.margin.cost),
    priceBefore: text(was.totals.net),
    priceAfter: text(now.totals.net),
  };
}

async function columnOf(records: CostingRecords, costSheetId: string): Promise<CostColumn | null> {
  const sheet = await findCostSheet(records.database, costSheetId);
  const [pieces] = sheet?.quantities ?? [];
  if (sheet === null || pieces === undefined) return null;
  const [column] = costSheet(await gatherFrom(records, { ...sheet, quantities: [pieces] })).columns;
  return column ?? null;
}

/** A cost sheet, at the first of its numbers of pieces. */
async function costOneSheet(costSheetId: string, { withList, withoutList }: Sides): Promise<CostedTouched> {
  const [was, now] = [await columnOf(withoutList, costSheetId), await columnOf(withList, costSheetId)];
  if (was === null || now === null) return { problem: 'it is not there any more' };
  for (const [column, when] of [
    [was, 'without this list'],
    [now, 'with this list'],
  ] as const) {
    const [unpriced] = column.unpriced;
    if (unpriced !== undefined)
      return { problem: `${unpriced.material.name} has no price ${when}: ${unpriced.why}` };
  }
  return {
    currency: await withList.currency(),
    costBefore: text(was.classes.costOfProduction),
    costAfter: text(now.classes.costOfProduction),
    priceBefore: text(was.price.netPrice),
    priceAfter: text(now.price.netPrice),
  };
}

export interface Touched {
  readonly costSheetId: string | null;
  readonly revision: { readonly state: string; readonly draft: unknown } | null;
  /** Of a sent quote. */
  readonly frozen: FrozenAsks | undefined;
}

/** Costs one row with and without the list; what is wrong with the records it rests on is told in its place. */
export async function costTouched(touched: Touched, sides: Sides): Promise<CostedTouched> {
  const { revision, frozen, costSheetId } = touched;
  try {
    if (revision?.state === 'draft') return await costDraft(revision.draft, sides);
    if (frozen !== undefined) return await costSent(frozen, sides);
    if (costSheetId !== null) return await costOneSheet(costSheetId, sides);
    return { problem: 'it is not there any more' };
  } catch (error) {
    if (isOfCosting(error) || error instanceof QuotingInputError) return { problem: error.message };
    throw error;
  }
}
