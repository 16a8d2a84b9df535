import { COST_CAUSES, type ComparedColumn, type CostAndPrice, type CostDifference } from '@scantling/costing';
import {
  difference,
  type Figure,
  type FigureNode,
  type FigureTableBuilder,
  input,
  roundMoney,
  sum,
} from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { z } from 'zod';
import { currencySchema, figureId, figureNodeSchema } from '../figures.ts';
import type { WorkedCostSheet } from './worked-cost-sheet.ts';

const nodeSchema: z.ZodType<FigureNode, FigureNode> = figureNodeSchema;

/** Figures of what is explained, at the currency's minor unit. */
const costAndPriceSchema = z.strictObject({ cost: figureId, price: figureId });

const costChangeSchema = z.strictObject({
  kind: z.enum(['leaf', 'line', 'rest']).meta({
    description:
      'leaf: a value both rest on. line: one that came, went or is chosen otherwise. rest: what neither accounts for',
  }),
  key: z.string(),
  label: z.string(),
  why: z.string(),
  /** A leaf as it was and as it is, each with its source. */
  was: nodeSchema.nullable(),
  now: nodeSchema.nullable(),
  effect: costAndPriceSchema,
});

export const costDifferenceSchema = z
  .strictObject({
    currency: currencySchema,
    was: costAndPriceSchema,
    now: costAndPriceSchema,
    moved: costAndPriceSchema,
    /** In the order in which differences are attributed; a cause that moved nothing is left out. */
    causes: z.array(
      z.strictObject({
        cause: z.enum(COST_CAUSES),
        effect: costAndPriceSchema,
        changes: z.array(costChangeSchema),
      }),
    ),
    /** What rounding each effect to the minor unit leaves. */
    rounding: costAndPriceSchema,
  })
  .meta({ id: 'CostDifference' });
export type CostDifferenceAnswer = z.output<typeof costDifferenceSchema>;

/** A worked-out sheet's first column, as comparisons read it. */
export function comparedColumn({ columns, basis, figures }: WorkedCostSheet): ComparedColumn {
  const [column] = columns;
  if (column === undefined) throw new RangeError('a cost sheet has a column');
  return { ...column, basis, figures };
}

const HOW_ATTRIBUTED =
  'both sheets worked out with this alone put in place of the other: price, quantity, rate, rule and back; the mean of both ways';

type Totals = Readonly<Record<keyof CostAndPrice, Figure<'money'>>>;

function both(make: (total: keyof CostAndPrice) => Figure<'money'>): Totals {
  return { cost: make('cost'), price: make('price') };
}

const TOTALS = { cost: 'cost of production', price: 'net price' } as const;

/** Puts a difference's figures into the table: each effect rounded, so that they add up as they are shown. */
export function toCostDifference(
  found: CostDifference,
  table: FigureTableBuilder,
  prefix = 'difference',
): CostDifferenceAnswer {
  const currency: Currency = found.currency;
  const add = (name: string, { cost, price }: Totals) => ({
    cost: table.add(`${prefix}/${name}/cost`, cost),
    price: table.add(`${prefix}/${name}/price`, price),
  });
  const leaf = (name: string, label: string, amounts: CostAndPrice, text: string): Totals =>
    both((total) =>
      roundMoney(
        `${label}: ${TOTALS[total]}`,
        input({
          key: `${prefix}/${name}/${total}/exact`,
          label: `${label}: ${TOTALS[total]}, exactly`,
          unit: 'money',
          value: amounts[total],
          currency,
          source: { kind: 'cost-sheet', text },
        }),
      ),
    );
  const was = leaf('was', 'was', found.was, 'the one cost sheet, worked out');
  const now = leaf('now', 'now', found.now, 'the other cost sheet, worked out');
  const moved = both((total) => difference(`${TOTALS[total]} moved by`, now[total], was[total]));
  const groups = COST_CAUSES.flatMap((cause) => {
    const changes = found.changes
      .filter((one) => one.cause === cause)
      .map((one) => ({
        one,
        effect: leaf(`${one.cause}/${one.kind}/${one.key}`, one.label, one.effect, HOW_ATTRIBUTED),
      }));
    if (changes.length === 0) return [];
    const effect = both((total) =>
      sum(
        `${cause}: ${TOTALS[total]}`,
        'money',
        changes.map((change) => change.effect[total]),
      ),
    );
    return [{ cause, changes, effect }];
  });
  const rounding = both((total) =>
    difference(
      `left by rounding: ${TOTALS[total]}`,
      moved[total],
      sum(
        'all causes',
        'money',
        groups.map(({ effect }) => effect[total]),
        currency,
      ),
    ),
  );
  return {
    currency,
    was: add('was', was),
    now: add('now', now),
    moved: add('moved', moved),
    causes: groups.map(({ cause, changes, effect }) => ({
      cause,
      effect: add(`cause/${cause}`, effect),
      changes: changes.map(({ one: { kind, key, label, why, was: old, now: current }, effect: own }) => ({
        kind,
        key,
        label,
        why,
        was: old,
        now: current,
        effect: add(`effect/${kind}/${key}`, own),
      })),
    })),
    rounding: add('rounding', rounding),
  };
}
