import type { FigureNode } from '@scantling/figures';

export const COST_CAUSES = ['price', 'quantity', 'rate', 'rule'] as const;
/**
 * Why a cost is another: price (price list, supplier's terms, exchange), quantity (bill, parameters, cutting), rate
 * (labour, machine, overhead, shop), rule (terms, allowances, another supplier or stock, lines that came or went). Their
 * order is the order in which differences are attributed.
 */
export type CostCause = (typeof COST_CAUSES)[number];

/** What leaves that no source alone tells apart are about, by where their keys begin. */
const BY_KEY: readonly (readonly [prefix: string, cause: CostCause])[] = [
  ['price/', 'price'],
  ['supplier/', 'price'],
  ['exchange-rate/', 'price'],
  ['bill/', 'quantity'],
  ['parameter/', 'quantity'],
  ['quantity/', 'quantity'],
  ['material/', 'quantity'],
  ['finish/', 'quantity'],
  ['glue/', 'quantity'],
  ['resaw/', 'quantity'],
  ['shop/kerf', 'quantity'],
  ['labour/', 'rate'],
  ['machine/', 'rate'],
  ['overhead/', 'rate'],
  ['shop/', 'rate'],
];

/** The cause a changed leaf belongs to, by its source and its key. */
export function causeOf({ id, source }: FigureNode): CostCause {
  switch (source?.kind) {
    case 'price-list':
    case 'supplier-terms':
    case 'exchange-rate':
      return 'price';
    case 'bill-of-materials':
    case 'measured-time':
    case 'cutting-plan':
      return 'quantity';
    default:
      return BY_KEY.find(([prefix]) => id.startsWith(prefix))?.[1] ?? 'rule';
  }
}
