import {
  currencySchema,
  PRICE_IMPACT_DECISIONS,
  PRICE_IMPACT_STATUSES,
  type priceImpactRowSchema,
  type priceImpactSchema,
} from '@scantling/contracts';
import { difference, type Figure, FigureTableBuilder, input, type Source, share } from '@scantling/figures';
import { z } from 'zod';
import { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';

type Access = Prisma.TransactionClient;
export type ImpactAnswer = z.output<typeof priceImpactSchema>;
export type ImpactRowAnswer = z.output<typeof priceImpactRowSchema>;

interface Counted {
  id: string;
  name: string;
  supplierName: string;
  validFrom: string;
  status: string | null;
  onDay: string | null;
  touched: number | null;
  problem: string | null;
  worked: number;
  moved: number;
  undecided: number;
  undecidedQuotes: number;
}

const OPEN = Prisma.sql`(revision.id is null or revision.state in ('sent', 'draft'))`;

/** Lists with how their impact stands, one row each, the newest first. */
function countedLists(where: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    select list.id, list.name, supplier.name as "supplierName", to_char(list."validFrom", 'YYYY-MM-DD') as "validFrom",
      impact.status, to_char(impact."onDay", 'YYYY-MM-DD') as "onDay", impact.touched, impact.problem,
      impact.touched - (count(*) filter (where not touched."isWorked"))::int as worked,
      (count(*) filter (where touched."isWorked"))::int as moved,
      (count(*) filter (where touched."isWorked" and not touched."isDecided" and ${OPEN}))::int as undecided,
      (count(*) filter (where touched."isWorked" and not touched."isDecided" and revision.id is not null
        and ${OPEN}))::int as "undecidedQuotes"
    from "PriceList" list
      join "Supplier" supplier on supplier.id = list."supplierId"
      left join "PriceImpact" impact on impact."listId" = list.id
      left join "PriceImpactRow" touched on touched."listId" = list.id
      left join "QuoteRevision" revision on revision.id = touched."revisionId"
    where ${where}
    group by list.id, supplier.name, impact."listId"`;
}

function toImpact(row: Counted): ImpactAnswer {
  const { id: listId, name: listName, supplierName, validFrom, onDay, problem } = row;
  return {
    listId,
    listName,
    supplierName,
    validFrom,
    status: z.enum(PRICE_IMPACT_STATUSES).parse(row.status ?? 'none'),
    onDay,
    touched: row.touched ?? 0,
    worked: Math.max(0, row.worked ?? 0),
    moved: row.moved,
    undecided: row.undecided,
    undecidedQuotes: row.undecidedQuotes,
    problem,
  };
}

/** @throws RequestProblem not-found */
export async function findImpact(database: Access, listId: string): Promise<ImpactAnswer> {
  const [row] = await database.$queryRaw<Counted[]>(countedLists(Prisma.sql`list.id = ${listId}`));
  if (row === undefined) throw notFound('price list');
  return toImpact(row);
}

/** Impacts with something left to decide, after the list named where one is. */
export async function undecidedImpacts(
  database: Access,
  { after, take }: { after: readonly string[] | undefined; take: number },
): Promise<ImpactAnswer[]> {
  const [validFrom, id] = after ?? [];
  const later =
    validFrom === undefined || id === undefined
      ? Prisma.sql`impact."listId" is not null`
      : Prisma.sql`impact."listId" is not null and (list."validFrom", list.id) < (${validFrom}::date, ${id})`;
  const rows = await database.$queryRaw<Counted[]>`
    select * from (${countedLists(later)}) as counted where undecided > 0
    order by "validFrom" desc, id desc limit ${take}`;
  return rows.map(toImpact);
}

/** Open quotes that a list moved and nobody decided on, each once. */
export async function undecidedQuotes(database: Access): Promise<number> {
  const [row] = await database.$queryRaw<{ quotes: number }[]>`
    select count(distinct revision."quoteId")::int as quotes
    from "PriceImpactRow" touched join "QuoteRevision" revision on revision.id = touched."revisionId"
    where touched."isWorked" and not touched."isDecided" and revision.state in ('sent', 'draft')`;
  return row?.quotes ?? 0;
}

export const WHOLE_ROW = {
  costSheet: { select: { title: true, client: { select: { name: true } } } },
  revision: {
    select: {
      state: true,
      number: true,
      title: true,
      quote: { select: { id: true, title: true, client: { select: { name: true } } } },
    },
  },
  decisions: { orderBy: [{ decidedAt: 'desc' }, { id: 'desc' }], take: 1 },
} as const satisfies Prisma.PriceImpactRowInclude;
export type ImpactRow = Prisma.PriceImpactRowGetPayload<{ include: typeof WHOLE_ROW }>;

function sourceOf({ revisionId, costSheetId, revision }: ImpactRow): Source {
  if (revision !== null)
    return {
      kind: 'cost-sheet',
      text: `the cost sheets behind ${revision.number ?? `"${revision.quote.title}"`}`,
      record: `quote:${revision.quote.id}`,
    };
  return { kind: 'cost-sheet', text: 'the cost sheet', record: `cost-sheet:${costSheetId ?? revisionId}` };
}

/** Cost, net price and margin of both sides, from what was worked out. */
function moneyOf(row: ImpactRow, table: FigureTableBuilder) {
  const { costBefore, costAfter, priceBefore, priceAfter, problem } = row;
  const nothing = { currency: null, cost: null, netPrice: null, margin: null };
  if (problem !== null || costBefore === null || costAfter === null) return nothing;
  if (priceBefore === null || priceAfter === null) return nothing;
  const currency = currencySchema.parse(row.currency);
  const isSent = row.revision !== null && row.revision.state !== 'draft';
  const leaf = (name: string, label: string, value: Prisma.Decimal): Figure<'money'> =>
    input({ key: name, label, unit: 'money', value: value.toFixed(), currency, source: sourceOf(row) });
  const was = leaf('cost/before', isSent ? 'cost as quoted' : 'cost without the list', costBefore);
  const now = leaf('cost/after', 'cost with the list', costAfter);
  // A price that was sent stands, whatever the cost does.
  const quoted = leaf(
    'price/before',
    isSent ? 'net price as quoted' : 'net price without the list',
    priceBefore,
  );
  const price = {
    before: quoted,
    after: isSent ? quoted : leaf('price/after', 'net price with the list', priceAfter),
  };
  const marginOf = (name: string, words: string, net: Figure<'money'>, cost: Figure<'money'>) =>
    net.value.isZero()
      ? null
      : table.add(`margin/${name}`, share(`margin ${words}`, difference(`left ${words}`, net, cost), net));
  return {
    currency,
    cost: {
      before: table.add('cost-before', was),
      after: table.add('cost-after', now),
      moved: table.add('cost-moved', difference('cost moves by', now, was)),
    },
    netPrice: {
      before: table.add('price-before', price.before),
      after: table.add('price-after', price.after),
    },
    margin: {
      before: marginOf('before', isSent ? 'as quoted' : 'without the list', price.before, was),
      after: marginOf('after', 'with the list', price.after, now),
    },
  };
}

/** @param names of those who decided, by actor */
export function toImpactRow(row: ImpactRow, names: ReadonlyMap<string, string>): ImpactRowAnswer {
  const { id, listId, revision, revisionId, costSheet, costSheetId, problem } = row;
  const table = new FigureTableBuilder({ withDerivations: true });
  const [newest] = row.decisions;
  const money = moneyOf(row, table);
  return {
    id,
    listId,
    kind: revision === null ? 'cost-sheet' : revision.state === 'draft' ? 'draft' : 'sent',
    title: revision?.title ?? revision?.quote.title ?? costSheet?.title ?? '',
    number: revision?.number ?? null,
    clientName: revision?.quote.client.name ?? costSheet?.client?.name ?? null,
    quoteId: revision?.quote.id ?? null,
    revisionId,
    costSheetId,
    isOpen: revision === null || revision.state === 'sent' || revision.state === 'draft',
    ...money,
    problem,
    decision:
      newest === undefined || newest.decision === 'reopen'
        ? null
        : {
            decision: z.enum(PRICE_IMPACT_DECISIONS).parse(newest.decision),
            reason: newest.reason,
            decidedBy: names.get(newest.decidedBy) ?? newest.decidedBy,
            decidedAt: newest.decidedAt.toISOString(),
          },
    figures: table.table(),
  };
}

/** The names of those who decided, by what records call them. */
export async function decidersOf(database: Access, rows: readonly ImpactRow[]): Promise<Map<string, string>> {
  const keys = rows.flatMap(({ decisions }) => decisions.map(({ decidedBy }) => decidedBy));
  const idsOf = (kind: string) =>
    keys.filter((key) => key.startsWith(`${kind}:`)).map((key) => key.slice(kind.length + 1));
  const named = { select: { id: true, name: true } } as const;
  const users = await database.user.findMany({ where: { id: { in: idsOf('user') } }, ...named });
  const tokens = await database.apiToken.findMany({ where: { id: { in: idsOf('token') } }, ...named });
  return new Map([
    ...users.map(({ id, name }) => [`user:${id}`, name] as const),
    ...tokens.map(({ id, name }) => [`token:${id}`, name] as const),
  ]);
}
