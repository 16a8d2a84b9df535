import type { Currency } from '@scantling/money';
import type { Discount, LineChoice, PriceMode, QuoteTax, ScheduledPart } from '../quote-totals/index.ts';

export const QUOTE_KINDS = ['quote', 'addition'] as const;
/** An addition is priced and accepted like a quote, on top of an accepted one. */
export type QuoteKind = (typeof QUOTE_KINDS)[number];

export const DUE_TIMES = ['on-acceptance', 'during-work', 'on-delivery', 'after-delivery'] as const;
/** When a part of the total is to be paid. */
export type DueTime = (typeof DUE_TIMES)[number];

/** A picture by the SHA-256 of its bytes, with what it says to somebody who does not see it. */
export interface ShownPicture {
  readonly sha256: string;
  readonly alternativeText: string;
}

interface LineBase {
  readonly id: string;
  readonly description: string;
  readonly details: string;
  /** Id of one of the draft's taxes. */
  readonly tax: string;
  readonly choice: LineChoice;
  readonly pictures: readonly ShownPicture[];
}

/** Pieces of a design at the net price of a cost sheet, as it is until the quote is sent. */
export interface CostSheetLine extends LineBase {
  readonly kind: 'cost-sheet';
  readonly costSheetId: string;
  readonly pieces: number;
}

export interface FreeLine extends LineBase {
  readonly kind: 'free';
  readonly quantity: string;
  /** As written on the paper ("piece", "m", "h"). */
  readonly unit: string;
  /** With tax where the draft's prices hold it. */
  readonly price: string;
  /** What the whole line costs us; null where that is not known. */
  readonly cost: string | null;
}

/** Bringing it there: a line like any other, with its own tax. */
export interface DeliveryLine extends LineBase {
  readonly kind: 'delivery';
  readonly price: string;
  readonly cost: string | null;
}

export type DraftLine = CostSheetLine | FreeLine | DeliveryLine;

export interface DraftPart extends ScheduledPart {
  readonly due: DueTime;
}

/** Everything that is decided about an offer before it is sent. */
export interface QuoteDraft {
  readonly intro: string;
  readonly currency: Currency;
  readonly priceMode: PriceMode;
  readonly taxes: readonly QuoteTax[];
  readonly lines: readonly DraftLine[];
  readonly discount: Discount | null;
  readonly schedule: readonly DraftPart[];
  /** The day the work is promised for, YYYY-MM-DD. */
  readonly promisedOn: string | null;
  /** Days it holds from the day it is sent. */
  readonly validDays: number;
  readonly terms: string;
  readonly pictures: readonly ShownPicture[];
}
