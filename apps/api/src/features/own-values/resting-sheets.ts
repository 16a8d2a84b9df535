import { isShopWide, type LeafHome, quoteDraftSchema, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { undatedKey } from '@scantling/figures';
import type { Prisma } from '../../generated/prisma/client.ts';
import { type CostSheetAnswer, toCostSheet, WITH_NAMES } from '../cost-sheets/cost-sheet-records.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';
import { isOfCosting } from '../quotes/cost-lines.ts';

type Access = Prisma.TransactionClient;

/** So many other sheets are worked out for a look; the rest are named. */
const MOST_WORKED_OUT = 40;

/** Another cost sheet at its first number of pieces. */
export interface RestingSheet {
  readonly sheet: CostSheetAnswer;
  readonly quantity: number;
  /** It has one of the leaves; null where it was not worked out. */
  readonly hasLeaf: boolean | null;
  readonly netPrice: string | null;
}

/** The net price at the first number of pieces, and whether one of the leaves is in it. */
async function look(
  database: Access,
  sheet: CostSheetAnswer,
  keys: ReadonlySet<string>,
  today: string,
): Promise<Omit<RestingSheet, 'sheet' | 'quantity'>> {
  try {
    const input = await gatherInput(database, { ...sheet, quantities: sheet.quantities.slice(0, 1) }, today);
    const { columns, figures } = toWorkedCostSheet(costSheet(input), { withDerivations: true });
    const hasLeaf = Object.values(figures).some(
      ({ id, source }) => source !== undefined && source.kind !== 'own-value' && keys.has(undatedKey(id)),
    );
    const net = columns[0] === undefined ? undefined : figures[columns[0].price.netPrice];
    return { hasLeaf, netPrice: net?.value ?? null };
  } catch (error) {
    if (!isOfCosting(error)) throw error;
    return { hasLeaf: null, netPrice: null };
  }
}

/**
 * Every other cost sheet that may rest on what is changed everywhere, the one changed last first. A change of the design
 * reaches the sheets of that design; one of the shop may reach all.
 */
export async function restingSheets(
  database: Access,
  own: CostSheetAnswer,
  changes: readonly { readonly leaf: string; readonly home: LeafHome }[],
  today: string,
): Promise<RestingSheet[]> {
  if (changes.length === 0) return [];
  const isForAll = changes.some(({ home }) => isShopWide(home));
  const rows = await database.costSheet.findMany({
    where: { id: { not: own.id }, ...(isForAll ? {} : { designId: own.designId, revision: null }) },
    orderBy: [{ updatedAt: 'desc' }, { id: 'asc' }],
    include: WITH_NAMES,
  });
  const keys = new Set(changes.map(({ leaf }) => undatedKey(leaf)));
  const found: RestingSheet[] = [];
  for (const [at, row] of rows.entries()) {
    const sheet = toCostSheet(row);
    const quantity = sheet.quantities[0] ?? 1;
    const nothing = { hasLeaf: null, netPrice: null };
    const looked = at < MOST_WORKED_OUT ? await look(database, sheet, keys, today) : nothing;
    found.push({ sheet, quantity, ...looked });
  }
  return found;
}

/** The same sheets after the change; those that neither have the leaf nor moved do not rest on it. */
export async function afterChange(
  database: Access,
  before: readonly RestingSheet[],
  today: string,
): Promise<
  {
    id: string;
    title: string;
    designName: string;
    quantity: number;
    was: string | null;
    now: string | null;
  }[]
> {
  const found = [];
  for (const { sheet, quantity, hasLeaf, netPrice: was } of before) {
    const { id, title, designName } = sheet;
    const now = was === null ? null : (await look(database, sheet, new Set(), today)).netPrice;
    if (hasLeaf === false && was === now) continue;
    found.push({ id, title, designName, quantity, was, now });
  }
  return found;
}

/** Drafts of quotes with a line of one of the cost sheets. */
export async function draftQuotesWith(database: Access, sheetIds: readonly string[]) {
  const wanted = new Set(sheetIds);
  const rows = await database.quoteRevision.findMany({
    where: { state: 'draft' },
    select: { draft: true, quote: { select: { id: true, title: true } } },
    orderBy: { createdAt: 'asc' },
  });
  const named = rows.filter(({ draft }) =>
    quoteDraftSchema
      .parse(draft)
      .lines.some((line) => line.kind === 'cost-sheet' && wanted.has(line.costSheetId)),
  );
  return [...new Map(named.map(({ quote }) => [quote.id, quote])).values()];
}
