import type { CostDifferenceAnswer } from '@scantling/contracts';

type Cause = CostDifferenceAnswer['causes'][number]['cause'];

/** What each cause is called, and what belongs to it. */
export const CAUSE_WORDS: Readonly<Record<Cause, { label: string; note: string }>> = {
  price: { label: 'Price', note: "price lists, suppliers' terms, exchange" },
  quantity: { label: 'Quantity', note: 'bill, parameters, cutting' },
  rate: { label: 'Rate', note: 'labour, machines, overhead, the shop' },
  rule: { label: 'Rule', note: 'terms, allowances, another supplier or stock, lines that came or went' },
};

export const IN_WHICH_ORDER =
  'The most money first: the cause that moves the cost most, up or down, and under each cause its largest change.';

export const HOW_SHARED =
  'Each value is put in place of the other in the order price, quantity, rate, rule, and back again; its effect is the mean of both ways. What two values move together falls half to each.';
