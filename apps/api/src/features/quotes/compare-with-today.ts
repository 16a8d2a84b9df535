import {
  clientDocumentSchema,
  comparedColumn,
  type QuoteToday,
  toCostDifference,
  toWorkedCostSheet,
  type WorkedQuote,
} from '@scantling/contracts';
import { type CostDifference, combineDifferences, costDifference } from '@scantling/costing';
import { difference, type Figure, FigureTableBuilder, input, named } from '@scantling/figures';
import { type ClientDocument, documentTotals, type LineCost, quoteMargin } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { costAsk, costedLine, isOfCosting } from './cost-lines.ts';
import { type FrozenWorking, frozenCosts } from './frozen-working.ts';
import { MISSING_PRICE_MEND, missingPrices, unpricedLines } from './unpriced-lines.ts';

type Access = Prisma.TransactionClient;
type LineToday = Omit<QuoteToday['lines'][number], 'costThen' | 'costNow'> & {
  now: LineCost | null;
  /** Null where today's cost cannot be told. */
  moved: CostDifference | null;
};

/** A line costed again today from what was asked and the bill as it was; why not where that cannot be. */
async function lineToday(
  records: CostingRecords,
  line: ClientDocument['lines'][number],
  kept: FrozenWorking['sheets'][string],
): Promise<LineToday> {
  const common = { id: line.id, description: line.description, costSheetId: kept.ask.costSheetId };
  try {
    const sheet = await costAsk(records, { ...kept.ask, onDate: records.today }, kept);
    const costed = costedLine(line, kept.ask, sheet);
    const [unpriced] = unpricedLines([costed]);
    if (unpriced !== undefined)
      return {
        ...common,
        moved: null,
        problem: `Today's cost is too low (${missingPrices(unpriced.materials)}): ${MISSING_PRICE_MEND}.`,
        now: null,
      };
    const worked = toWorkedCostSheet(sheet, { withDerivations: true });
    const moved = costDifference(comparedColumn(kept.worked), comparedColumn(worked));
    return { ...common, moved, problem: null, now: costed.cost };
  } catch (error) {
    // A grade or a material that is gone: told beside the line, the rest still compares.
    if (!isOfCosting(error)) throw error;
    return { ...common, moved: null, problem: error.message, now: null };
  }
}

function thenFigures({ currency, margin, figures }: WorkedQuote) {
  const money = (key: string, label: string, id: string): Figure<'money'> =>
    input({
      key: `then/${key}`,
      label: `${label} when sent`,
      unit: 'money',
      value: figures[id]?.value ?? '0',
      currency,
      source: { kind: 'cost-sheet', text: 'frozen when it was sent' },
    });
  const share = margin.margin;
  return {
    cost: money('cost', 'cost', margin.cost),
    profit: money('profit', 'left after all costs', margin.profit),
    margin:
      share === null
        ? null
        : input({
            key: 'then/margin',
            label: 'margin when sent',
            unit: 'ratio',
            value: figures[share]?.value ?? '0',
            source: { kind: 'cost-sheet', text: 'frozen when it was sent' },
          }),
  };
}

/**
 * What was sent beside today: each line from a design costed again, its leaves compared with the frozen ones, and the
 * margin then and now.
 * @param sent `kept` is our figures as frozen, with what was accepted chosen
 */
export async function compareWithToday(
  database: Access,
  sent: {
    document: unknown;
    frozen: FrozenWorking;
    kept: WorkedQuote;
    chosen: readonly string[];
    today: string;
  },
  options: { withDerivations: boolean },
): Promise<QuoteToday> {
  const { frozen, kept, chosen, today } = sent;
  const document = clientDocumentSchema.parse(sent.document);
  const records = new CostingRecords(database, today);
  const lines: LineToday[] = [];
  for (const line of document.lines) {
    const sheet = frozen.sheets[line.id];
    if (sheet !== undefined) lines.push(await lineToday(records, line, sheet));
  }
  const before = frozenCosts(document, frozen);
  const after = new Map(before);
  for (const { id, now } of lines) if (now !== null) after.set(id, now);
  const then = thenFigures(kept);
  const totals = documentTotals(document, chosen);
  const now = quoteMargin(totals, after, document);
  const counted = new Set(totals.lines.filter(({ isCounted }) => isCounted).map(({ line }) => line.id));
  const moved = lines.flatMap((line) =>
    line.moved === null || !counted.has(line.id) ? [] : [{ id: line.id, difference: line.moved }],
  );
  const table = new FigureTableBuilder(options);
  const maybe = (name: string, figure: Figure | null) => (figure === null ? null : table.add(name, figure));
  return {
    sentOn: document.sentOn,
    today,
    whenSent: {
      cost: table.add('then/cost', then.cost),
      profit: table.add('then/profit', then.profit),
      margin: maybe('then/margin', then.margin),
    },
    now: {
      cost: table.add('now/cost', named('cost today', now.cost)),
      profit: table.add('now/profit', named('left after all costs today', now.profit)),
      margin: now.margin === null ? null : table.add('now/margin', named('margin today', now.margin)),
    },
    costMoved: table.add('cost-moved', difference('cost has moved by', now.cost, then.cost)),
    difference: toCostDifference(combineDifferences(moved, document.currency), table),
    lines: lines.map(({ now: cost, moved: _, ...line }) => ({
      ...line,
      costThen: table.add(`then/line/${line.id}`, thenCost(document, line, before)),
      costNow: cost === null || cost.cost === null ? null : table.add(`now/line/${line.id}`, cost.cost),
    })),
    figures: table.table(),
  };
}

function thenCost(
  { currency }: ClientDocument,
  line: Pick<LineToday, 'id' | 'description'>,
  before: ReadonlyMap<string, LineCost>,
): Figure<'money'> {
  return input({
    key: `then/line/${line.id}/cost`,
    label: `${line.description}: cost when sent`,
    unit: 'money',
    value: before.get(line.id)?.cost?.value ?? '0',
    currency,
    source: { kind: 'cost-sheet', text: 'frozen when it was sent' },
  });
}
