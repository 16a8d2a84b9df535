import { type Decimal, decimal } from '@scantling/decimals';
import {
  attributeDifference,
  compareLeaves,
  type DifferenceStep,
  type FigureNode,
  GraphValues,
  type LeafChange,
} from '@scantling/figures';
import { type Currency, CurrencyMismatchError } from '@scantling/money';
import { COST_CAUSES, type CostCause, causeOf } from './cause.ts';
import { type ComparedColumn, lineSteps } from './compared-column.ts';

/** Amounts of the two totals that a comparison explains. */
export interface CostAndPrice {
  readonly cost: Decimal;
  readonly price: Decimal;
}

/** One reason why two worked-out sheets differ. */
export interface CostChange {
  readonly cause: CostCause;
  /** leaf: a value that both sheets rest on. line: a line that came, went or is chosen otherwise. rest: all else. */
  readonly kind: 'leaf' | 'line' | 'rest';
  readonly key: string;
  readonly label: string;
  readonly why: string;
  /** A leaf on each side. */
  readonly was: FigureNode | null;
  readonly now: FigureNode | null;
  readonly effect: CostAndPrice;
}

/** What moved cost and net price of a sheet, cause by cause. */
export interface CostDifference {
  readonly currency: Currency;
  readonly was: CostAndPrice;
  readonly now: CostAndPrice;
  /** In the order of the causes; within one, the largest move of the cost first. They add up to now - was exactly. */
  readonly changes: readonly CostChange[];
}

const NOTHING = decimal(0);

/** Leaves that both sides have with another value in the same unit; only those that cost or price rest on. */
function changedLeaves(was: ComparedColumn, now: ComparedColumn): Required<LeafChange>[] {
  const rests = [was, now].map(
    ({ figures, classes, price }) => new GraphValues(figures, [classes.costOfProduction, price.netPrice]),
  );
  return compareLeaves(was.figures, now.figures).flatMap(({ kind, key, old, now: current }) => {
    if (old === undefined || current === undefined) return [];
    if (old.unit !== current.unit || old.currency !== current.currency) return [];
    if (!(rests[0]?.has(old.id) || rests[1]?.has(current.id))) return [];
    return [{ kind, key, old, now: current }];
  });
}

function currencyOf({ figures, classes }: ComparedColumn): Currency {
  const found = figures[classes.costOfProduction]?.currency;
  if (found == null) throw new RangeError('a cost of production is an amount of money');
  return found;
}

type Told = Omit<CostChange, 'effect'> & { readonly step: DifferenceStep };

function leafSteps(was: ComparedColumn, now: ComparedColumn): Told[] {
  const told = changedLeaves(was, now).map(
    ({ key, old, now: current }): Told => ({
      cause: causeOf(current),
      kind: 'leaf',
      key,
      label: current.label,
      why: '',
      was: old,
      now: current,
      step: { kind: 'leaf', was: old.id, now: current.id },
    }),
  );
  return COST_CAUSES.flatMap((cause) => told.filter((one) => one.cause === cause));
}

function bySize(one: CostChange, other: CostChange): number {
  return (
    COST_CAUSES.indexOf(one.cause) - COST_CAUSES.indexOf(other.cause) ||
    Number(one.kind === 'rest') - Number(other.kind === 'rest') ||
    other.effect.cost.abs().comparedTo(one.effect.cost.abs()) ||
    other.effect.price.abs().comparedTo(one.effect.price.abs()) ||
    (one.key < other.key ? -1 : 1)
  );
}

/** In the order of the causes; within one, the largest move of the cost first and what no line accounts for last. */
export function inOrderOfSize(changes: readonly CostChange[]): CostChange[] {
  return [...changes].sort(bySize);
}

/**
 * Why one worked-out sheet costs another amount than the other, leaf by leaf, with the cause. Values that both rest on are
 * put into place in the order price, quantity, rate, rule; then lines that came, went or are chosen otherwise; what is left
 * is a line of its own. How shared effects fall is told at `attributeDifference`.
 * @throws CurrencyMismatchError where the sheets are in two currencies
 */
export function costDifference(was: ComparedColumn, now: ComparedColumn): CostDifference {
  const [before, currency] = [currencyOf(was), currencyOf(now)];
  if (before !== currency) throw new CurrencyMismatchError(before, currency, 'cost of production');
  const lines = lineSteps(was, now).map(
    ({ key, label, why, step }): Told => ({
      cause: 'rule',
      kind: 'line',
      key,
      label,
      why,
      was: null,
      now: null,
      step,
    }),
  );
  const told = [...leafSteps(was, now), ...lines];
  const totals = ({ classes, price }: ComparedColumn) => [classes.costOfProduction, price.netPrice];
  const found = attributeDifference(
    { figures: was.figures, totals: totals(was) },
    { figures: now.figures, totals: totals(now) },
    told.map(({ step }) => step),
  );
  const pair = ([cost = NOTHING, price = NOTHING]: readonly Decimal[]): CostAndPrice => ({ cost, price });
  const rest: CostChange = {
    cause: 'rule',
    kind: 'rest',
    key: 'rest',
    label: 'Worked out in another way',
    why: 'what no single value or line accounts for',
    was: null,
    now: null,
    effect: pair(found.rest),
  };
  const changes = told.map(({ step: _, ...one }, at) => ({ ...one, effect: pair(found.effects[at] ?? []) }));
  const isSomething = ({ kind, effect }: CostChange): boolean =>
    kind === 'leaf' || !(effect.cost.isZero() && effect.price.isZero());
  return {
    currency,
    was: pair(found.was),
    now: pair(found.now),
    changes: inOrderOfSize([...changes, rest].filter(isSomething)),
  };
}
