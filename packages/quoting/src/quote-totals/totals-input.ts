import type { Source } from '@scantling/figures';
import type { Currency } from '@scantling/money';

export const PRICE_MODES = ['exclusive', 'inclusive'] as const;
/** exclusive: prices are without tax, which is added. inclusive: prices hold their tax, and the gross is what counts. */
export type PriceMode = (typeof PRICE_MODES)[number];

/** How a line belongs to the offer: always, where the client wants it, or as one of a group of which one is taken. */
export type LineChoice =
  | { readonly kind: 'included' }
  | { readonly kind: 'option' }
  | {
      readonly kind: 'alternate';
      readonly group: string;
      /** The one of its group that is taken where the client chooses no other. */
      readonly isStandard: boolean;
    };

/** One rate of tax that lines fall under. */
export interface QuoteTax {
  readonly id: string;
  /** Category of EN 16931 (UNTDID 5305): S standard, Z zero, E exempt, AE reverse charge, O outside ... */
  readonly category: string;
  /** Fraction as text: 19 % is "0.19". */
  readonly rate: string;
  readonly name: string;
  /** Why no tax is charged, where the law wants it said; printed on the paper. */
  readonly exemptionReason: string;
}

export interface TotalsLine {
  readonly id: string;
  readonly label: string;
  readonly quantity: string;
  /** For `priceBase` of them. */
  readonly price: string;
  /** How many the price is for; 1 when absent. A batch keeps its price to the cent that way. */
  readonly priceBase?: string;
  /** The price is without tax in either mode: where the document's prices hold it, it is added and rounded first. */
  readonly isPriceWithoutTax?: boolean;
  /** Id of one of the taxes. */
  readonly tax: string;
  readonly choice: LineChoice;
  /** Where the price comes from; entered by hand when absent. */
  readonly source?: Source;
}

/** Taken off the whole document before tax: a share of its lines, or an amount (with tax where prices hold it). */
export type Discount =
  | { readonly kind: 'share'; readonly share: string }
  | { readonly kind: 'amount'; readonly amount: string };

/** A part of the total with tax, and when it is due in words. */
export interface ScheduledPart {
  readonly id: string;
  readonly label: string;
  readonly share: string;
}

export interface QuoteTotalsInput {
  readonly currency: Currency;
  readonly priceMode: PriceMode;
  readonly taxes: readonly QuoteTax[];
  readonly lines: readonly TotalsLine[];
  /** Ids of the options wanted, and of alternates taken instead of the standard one of their group. */
  readonly chosen: readonly string[];
  readonly discount: Discount | null;
  /** Parts that add up to 1, or none. */
  readonly schedule: readonly ScheduledPart[];
}
