import {
  difference,
  divide,
  type Figure,
  increment,
  named,
  per,
  scale,
  share,
  sum,
} from '@scantling/figures';
import type { Currency } from '@scantling/money';
import type { PriceMode, QuoteTotals } from '../quote-totals/index.ts';
import type { DraftPart } from './quote-draft.ts';

/** What we know about a line that the client does not see. */
export interface LineCost {
  /** Of the whole line; null where nobody has said. */
  readonly cost: Figure<'money'> | null;
  /** What must be bought for it. */
  readonly bought: Figure<'money'>;
  /** What the owner does for the line, and what of its cost is the owner's labour; absent where nobody knows. */
  readonly owner?: { readonly hours: Figure<'h'>; readonly labour: Figure<'money'> } | undefined;
}

export interface LineMargin {
  readonly id: string;
  readonly net: Figure<'money'>;
  readonly cost: Figure<'money'> | null;
  /** On the net price before the document's discount; null without a cost or a price. */
  readonly margin: Figure<'ratio'> | null;
}

export interface QuoteMargin {
  readonly lines: readonly LineMargin[];
  /** Of the lines that count. */
  readonly cost: Figure<'money'>;
  readonly profit: Figure<'money'>;
  /** Share of the net after discount; null where that is nothing. */
  readonly margin: Figure<'ratio'> | null;
  /** (net - all costs but the owner's labour) / the owner's hours; null where no line has such hours. */
  readonly hourlyEarnings: Figure<'money/h'> | null;
  /** Counted lines whose cost nobody has said, which the margin takes as nothing. */
  readonly linesWithoutCost: readonly string[];
  readonly bought: Figure<'money'>;
  /** Paid on acceptance, and its part that is not tax. */
  readonly deposit: Figure<'money'>;
  readonly depositWithoutTax: Figure<'money'>;
  /** The deposit, without its tax, does not pay for what must be bought. */
  readonly isDepositShort: boolean;
}

interface Context {
  readonly currency: Currency;
  readonly priceMode: PriceMode;
  readonly schedule: readonly DraftPart[];
}

function netOf(
  label: string,
  amount: Figure<'money'>,
  rate: Figure<'ratio'>,
  priceMode: PriceMode,
): Figure<'money'> {
  if (priceMode === 'exclusive') return named(`${label}: net`, amount);
  return divide(`${label}: net`, amount, increment('1 + rate', rate));
}

function depositOf(totals: QuoteTotals, { currency, schedule }: Context) {
  const due = new Set(schedule.filter((part) => part.due === 'on-acceptance').map(({ id }) => id));
  const paid = totals.schedule.filter(({ part }) => due.has(part.id)).map(({ amount }) => amount);
  const deposit = sum('deposit, due on acceptance', 'money', paid, currency);
  if (totals.total.value.isZero()) return { deposit, depositWithoutTax: deposit };
  const netPart = share('part of the total that is not tax', totals.net, totals.total);
  const depositWithoutTax = scale('deposit without its tax', deposit, netPart);
  return { deposit, depositWithoutTax };
}

/** What an hour of the owner brings with the lines that count; lines without a known cost are taken as free. */
function earningsOf(
  profit: Figure<'money'>,
  owners: readonly NonNullable<LineCost['owner']>[],
  currency: Currency,
): Figure<'money/h'> | null {
  const hours = sum(
    "the owner's hours on the lines",
    'h',
    owners.map((owner) => owner.hours),
  );
  if (hours.value.isZero()) return null;
  const labour = sum(
    "the owner's labour in the cost",
    'money',
    owners.map((owner) => owner.labour),
    currency,
  );
  const left = sum("left for the owner's hours", 'money', [profit, labour]);
  return per('effective hourly earnings of the owner', left, hours);
}

/**
 * What the quote leaves us with the lines that count in `totals`, and whether the deposit pays for what must be bought.
 * @param costs by line id
 */
export function quoteMargin(
  totals: QuoteTotals,
  costs: ReadonlyMap<string, LineCost>,
  context: Context,
): QuoteMargin {
  const { currency, priceMode } = context;
  const counted = totals.lines.filter(({ isCounted }) => isCounted);
  const costOf = (id: string) => costs.get(id)?.cost ?? null;
  const lines = totals.lines.map(({ line, amount, rate }): LineMargin => {
    const net = netOf(line.label, amount, rate, priceMode);
    const cost = costOf(line.id);
    const left = cost === null ? null : difference(`${line.label}: left over`, net, cost);
    const margin = left === null || net.value.isZero() ? null : share(`${line.label}: margin`, left, net);
    return { id: line.id, net, cost, margin };
  });
  const cost = sum(
    'cost of the lines',
    'money',
    counted.flatMap(({ line }) => costOf(line.id) ?? []),
    currency,
  );
  const bought = sum(
    'what must be bought',
    'money',
    counted.flatMap(({ line }) => costs.get(line.id)?.bought ?? []),
    currency,
  );
  const profit = difference('left after all costs', totals.net, cost);
  const { deposit, depositWithoutTax } = depositOf(totals, context);
  return {
    lines,
    cost,
    profit,
    margin: totals.net.value.isZero() ? null : share('margin on the net total', profit, totals.net),
    hourlyEarnings: earningsOf(
      profit,
      counted.flatMap(({ line }) => costs.get(line.id)?.owner ?? []),
      currency,
    ),
    linesWithoutCost: counted.map(({ line }) => line.id).filter((id) => costOf(id) === null),
    bought,
    deposit,
    depositWithoutTax,
    isDepositShort: depositWithoutTax.value.lt(bought.value),
  };
}
