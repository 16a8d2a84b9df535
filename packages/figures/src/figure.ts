import type { Decimal } from '@scantling/decimals';
import type { Currency } from '@scantling/money';
import type { Unit } from '@scantling/units';
import type { OperationName } from './operations/index.ts';
import type { Source } from './source.ts';

/** Which values a leaf can take at all, as decimal text in its unit. */
export interface LeafBounds {
  readonly least?: string;
  readonly most?: string;
  /** It counts things and has no value between two whole numbers. */
  readonly isWhole?: boolean;
}

/** What a share of a whole can be: yield, margin, the part of a tax that is recovered. */
export const SHARE_BOUNDS: LeafBounds = { least: '0', most: '1' };
/** What a count of things can be. */
export const COUNT_BOUNDS: LeafBounds = { least: '0', isWhole: true };

/** A leaf: a value that came from outside, with where it came from. */
export interface Input {
  readonly kind: 'input';
  /** Names the leaf for good ("machine/planer/life-hours"), so that two dates can be compared leaf by leaf. */
  readonly key: string;
  readonly source: Source;
  readonly bounds?: LeafBounds;
}

/** A value worked out from other figures by one named operation. */
export interface Derived {
  readonly kind: OperationName;
  readonly inputs: readonly Figure[];
  /** Settings of the operation that are no figures: decimal places of a rounding, bounds of a break. */
  readonly settings?: Readonly<Record<string, string>>;
}

/**
 * A number that shows its working: label, unit, value and how it came about. Immutable; a figure used
 * twice is the same object, which is how a shared input stands once in an answer.
 */
export interface Figure<U extends Unit = Unit> {
  readonly label: string;
  readonly unit: U;
  /** Set exactly when the unit is money or money per something. */
  readonly currency: Currency | null;
  readonly value: Decimal;
  readonly how: Input | Derived;
  /** Why it is so, where the derivation alone does not tell ("cheapest offer in force", "pack of 50"). */
  readonly note?: string;
}

export function isInput(figure: Figure): figure is Figure & { readonly how: Input } {
  return figure.how.kind === 'input';
}
