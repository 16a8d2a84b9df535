import type { Currency } from '@scantling/money';
import type { PricingUnitId } from '@scantling/units';

export const BREAK_KINDS = ['all-units', 'incremental'] as const;
/** all-units: the break's price holds for everything bought. incremental: only for what lies beyond the break. */
export type BreakKind = (typeof BREAK_KINDS)[number];

export interface PriceBreak {
  /** Quantity in the offer's unit from which the amount holds; the first is 0. */
  readonly from: string;
  readonly amount: string;
  /** The line it stands on, where that is not the offer's own: breaks hold on from earlier lists. */
  readonly line?: ListedLine;
}

/** A line of a price list, by ids and in words. */
export interface ListedLine {
  readonly id: string;
  readonly listId: string;
  readonly listName: string;
  /** YYYY-MM-DD */
  readonly listDate: string;
  readonly row: number;
}

/** One supplier's price of a material on one dated list: all breaks of supplier + code + unit. */
export interface PriceOffer {
  /** Id of the price line of the first break. */
  readonly id: string;
  readonly supplier: string;
  readonly supplierName: string;
  /** Id of the list, where it is kept. */
  readonly listId?: string;
  readonly listName: string;
  /** Day the list is dated, YYYY-MM-DD. */
  readonly listDate: string;
  /** Last day it holds. */
  readonly validTo?: string;
  /** Day from which a later complete list without it has ended it. */
  readonly endedFrom?: string;
  readonly code: string;
  readonly row: number;
  readonly unit: PricingUnitId;
  readonly currency: Currency;
  readonly breakKind: BreakKind;
  readonly breaks: readonly PriceBreak[];
  /** Sold in multiples of this quantity only. */
  readonly packSize?: string;
  readonly minimumQuantity?: string;
  readonly leadDays?: number;
  readonly tax: PurchaseTax;
  /** Into the sheet's currency, where the offer is in another. */
  readonly exchange?: Exchange;
}

/** A dated rate of exchange, with where it came from in words. */
export interface Exchange {
  readonly to: Currency;
  readonly rate: string;
  readonly onDate: string;
  readonly source: string;
}

/** Tax on a purchase; rate and share as decimal text from 0 to 1. */
export interface PurchaseTax {
  readonly isIncluded: boolean;
  readonly rate: string;
  /** Share of it that the workshop gets back. */
  readonly recoverableShare: string;
}
