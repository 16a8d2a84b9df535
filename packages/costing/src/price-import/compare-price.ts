import { decimal } from '@scantling/decimals';
import type { PriceRow } from './price-row.ts';

/** What importing a row does to the prices there are. */
export const PRICE_CHANGES = [
  'new',
  'dearer',
  'cheaper',
  'changed',
  'unchanged',
  'gone',
  'unreadable',
] as const;
export type PriceChange = (typeof PRICE_CHANGES)[number];

/** The terms a list gives to all its rows. */
export interface ListTerms {
  readonly currency: string;
  readonly taxIncluded: boolean;
  /** Share of the net price, decimal text. */
  readonly taxRate: string;
  readonly taxRecoverable: string;
}

/** The price of the same identity in force until now. */
export interface CurrentPrice extends PriceRow, ListTerms {}

function isSame(one: string | undefined, other: string | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return decimal(one).eq(other);
}

/**
 * new: nothing was asked for it until now. dearer, cheaper: the same terms, another amount. changed: other terms
 * (currency, tax, kind of break, pack, minimum, lead time, material), so that amounts alone do not compare; a
 * material the row does not name stays as it is.
 */
export function comparePrice(
  row: PriceRow,
  terms: ListTerms,
  current: CurrentPrice | undefined,
): Exclude<PriceChange, 'gone' | 'unreadable'> {
  if (current === undefined) return 'new';
  const hasSameMoney =
    terms.currency === current.currency &&
    terms.taxIncluded === current.taxIncluded &&
    isSame(terms.taxRate, current.taxRate) &&
    isSame(terms.taxRecoverable, current.taxRecoverable) &&
    row.breakKind === current.breakKind;
  if (!hasSameMoney) return 'changed';
  const moved = decimal(row.amount).comparedTo(current.amount);
  if (moved !== 0) return moved > 0 ? 'dearer' : 'cheaper';
  const hasSameTerms =
    isSame(row.packSize, current.packSize) &&
    isSame(row.minimumQuantity, current.minimumQuantity) &&
    row.leadDays === current.leadDays &&
    (row.material === undefined || row.material === current.material);
  return hasSameTerms ? 'unchanged' : 'changed';
}
