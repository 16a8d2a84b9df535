import type { Currency } from '@scantling/money';
import type { DocumentLine, DocumentWorkshop } from '../quote/client-document.ts';
import type { PriceMode } from '../quote-totals/index.ts';
import type { InvoiceKind } from './issued-paper.ts';
import type { TaxRow } from './taxed-amount.ts';

export interface BilledClient {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly taxNumber: string;
}

/** Lines of the quote or of one addition, as accepted. */
export interface BilledGroup {
  readonly number: string;
  readonly kind: 'quote' | 'addition';
  readonly priceMode: PriceMode;
  readonly lines: readonly Pick<
    DocumentLine,
    'id' | 'kind' | 'description' | 'details' | 'quantity' | 'unit' | 'price' | 'priceBase' | 'amount'
  >[];
  readonly sumOfLines: string;
  readonly discount: string;
}

/** An invoice or credit note that stands against the contract before this paper. */
export interface DeductedPaper {
  readonly number: string;
  readonly kind: InvoiceKind;
  readonly issuedOn: string;
  readonly net: string;
  readonly tax: string;
  /** With tax; below 0 for a credit note, which gives it back. */
  readonly total: string;
}

/** What an invoice or credit note says, whole and frozen: the paper is made of it. Amounts are decimal text. */
export interface InvoiceDocument {
  readonly kind: InvoiceKind;
  readonly number: string;
  readonly issuedOn: string;
  /** When the work was or will be handed over; null where nothing is yet. */
  readonly suppliedOn: string | null;
  readonly dueOn: string;
  readonly workshop: DocumentWorkshop;
  readonly client: BilledClient;
  /** The client's own number for the order. */
  readonly orderNumber: string;
  readonly quoteNumber: string;
  readonly title: string;
  /** What is asked for in words: "On acceptance, 40 %". */
  readonly what: string;
  readonly note: string;
  readonly currency: Currency;
  /** Lines of the contract: on a final invoice only. */
  readonly groups: readonly BilledGroup[];
  /** The contract as a whole: on a final invoice only. */
  readonly contract: {
    readonly taxes: readonly TaxRow[];
    readonly net: string;
    readonly tax: string;
    readonly total: string;
  } | null;
  readonly deducted: readonly DeductedPaper[];
  /** What this paper itself asks for, or gives back. */
  readonly taxes: readonly TaxRow[];
  readonly net: string;
  readonly tax: string;
  readonly total: string;
  /** The invoice a credit note takes back from. */
  readonly credits: { readonly number: string; readonly issuedOn: string } | null;
}

export interface ReceiptDocument {
  readonly number: string;
  readonly receivedOn: string;
  readonly workshop: DocumentWorkshop;
  readonly client: BilledClient;
  readonly invoiceNumber: string;
  readonly title: string;
  readonly method: string;
  readonly reference: string;
  readonly currency: Currency;
  readonly amount: string;
  /** Still owed on the invoice after it; below 0 where too much was paid. */
  readonly owedAfter: string;
}

export interface DeliveryDocument {
  readonly number: string;
  readonly deliveredOn: string;
  readonly workshop: DocumentWorkshop;
  readonly client: BilledClient;
  readonly quoteNumber: string;
  readonly orderNumber: string;
  readonly title: string;
  readonly note: string;
  readonly currency: Currency;
  readonly lines: readonly {
    readonly revisionId: string;
    readonly lineId: string;
    readonly description: string;
    readonly quantity: string;
    readonly unit: string;
    readonly ordered: string;
    /** Still to come after this delivery. */
    readonly outstanding: string;
  }[];
}
