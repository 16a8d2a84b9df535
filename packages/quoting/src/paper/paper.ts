/** What a client gets on paper. An addition is a priced change to an accepted quote. */
export const PAPER_KINDS = [
  'quote',
  'addition',
  'invoice',
  'credit-note',
  'receipt',
  'delivery-note',
] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

export const PAPER_SIZES = ['a4', 'letter'] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

/**
 * Everything a paper shows, as text in the workshop's language, units and currency: the template lays out and works
 * nothing out. Dates in `date` alone are ISO 8601; every other date is text. The bytes of pictures are passed beside.
 */
export interface Paper {
  readonly kind: PaperKind;
  readonly size: PaperSize;
  /** BCP 47; the words of the template itself are in this language too. */
  readonly language: 'en';
  /** The document's title as a reader's list of files shows it: "Quote Q-2026-0007: hall bench". */
  readonly title: string;
  /** What it is, as its heading: "Quote", "Change to your order", "Deposit invoice". */
  readonly heading: string;
  readonly number: string;
  /** Day of the paper, ISO 8601 ("2026-11-25"): the document's own date, and what makes its bytes repeatable. */
  readonly date: string;
  readonly letterhead: PaperLetterhead;
  /** Lines for the window of the envelope, at most nine, the name first. */
  readonly addressee: readonly string[];
  /** The title block: number, date, validity, what it refers to. */
  readonly facts: readonly PaperFact[];
  /** What it is about, in one line. */
  readonly subject: string | null;
  readonly intro: readonly string[];
  readonly lines: PaperLines | null;
  readonly totals: readonly PaperTotal[];
  readonly taxes: PaperTaxes | null;
  /** What was invoiced before, and what is left: on a final invoice. */
  readonly deducted: PaperDeducted | null;
  readonly schedule: PaperSchedule | null;
  /** Delivery, terms and the like, in the order they stand. */
  readonly sections: readonly PaperSection[];
  readonly payment: PaperPayment | null;
  readonly acceptance: PaperAcceptance | null;
  /** Larger pictures after everything else. */
  readonly pictures: readonly PaperPicture[];
}

export interface PaperFact {
  readonly label: string;
  readonly value: string;
}

export interface PaperLetterhead {
  readonly name: string;
  /** Street, place, country; also the small line above the addressee. */
  readonly address: readonly string[];
  /** Mail, telephone, web: as given; an address of the web or of mail becomes a link. */
  readonly contact: readonly PaperContact[];
  /** Address, tax number, registration, bank: what has to stand on every paper, in columns. */
  readonly footer: readonly PaperFooterColumn[];
  /** One more line under the columns. */
  readonly footerNote: string | null;
  readonly logo: PaperPicture | null;
}

export interface PaperContact {
  readonly label: string;
  readonly text: string;
  /** `mailto:`, `tel:` or `https:`; null for plain text. */
  readonly link: string | null;
}

export interface PaperFooterColumn {
  readonly heading: string;
  readonly lines: readonly string[];
}

export interface PaperPicture {
  /** SHA-256 of the picture's bytes, in hex: the bytes are passed under this key. */
  readonly sha256: string;
  /** What the picture shows, for who cannot see it. Never empty. */
  readonly alternative: string;
  readonly caption: string | null;
}

export interface PaperLines {
  /** Heads of the columns; a column whose head is null is left out (a delivery note shows no prices). */
  readonly heads: PaperLineHeads;
  readonly groups: readonly PaperLineGroup[];
  /** Words before a sum carried over to the next page: "Carried over", "Brought forward". */
  readonly carriedOver: string;
  readonly broughtForward: string;
}

export interface PaperLineHeads {
  readonly position: string;
  readonly description: string;
  readonly quantity: string;
  readonly unitPrice: string | null;
  readonly amount: string | null;
}

export interface PaperLineGroup {
  /** Null for the lines that are simply part of the whole. */
  readonly heading: string | null;
  /** How the group is to be read: "Choose one of these". */
  readonly note: string | null;
  readonly lines: readonly PaperLine[];
  readonly subtotal: PaperFact | null;
}

export interface PaperLine {
  /** "1", "2a". */
  readonly position: string;
  readonly description: string;
  readonly details: readonly string[];
  readonly quantity: string;
  readonly unitPrice: string | null;
  readonly amount: string | null;
  /** Beside the description: "Option", "Instead of 2", "Chosen". */
  readonly mark: string | null;
  /** False for what the totals do not hold: options and alternates that are not chosen. */
  readonly isCounted: boolean;
  /** Sum of the counted amounts up to and with this line, for the foot of a page that ends here. */
  readonly carried: string | null;
  readonly pictures: readonly PaperPicture[];
}

export interface PaperTotal {
  readonly label: string;
  readonly value: string;
  /** `sum` closes a column, `final` is the one amount the paper is about. */
  readonly weight: 'plain' | 'sum' | 'final';
}

export interface PaperTaxes {
  readonly heading: string;
  readonly heads: { readonly category: string; readonly taxable: string; readonly tax: string };
  readonly rows: readonly PaperTaxRow[];
}

export interface PaperTaxRow {
  /** With its rate: "VAT 19 %". */
  readonly category: string;
  readonly taxable: string;
  readonly tax: string;
  /** Why no tax is charged, where the law wants it said. */
  readonly note: string | null;
}

export interface PaperDeducted {
  readonly heading: string;
  readonly heads: {
    readonly label: string;
    readonly net: string;
    readonly tax: string;
    readonly total: string;
  };
  readonly rows: readonly {
    readonly label: string;
    readonly net: string;
    readonly tax: string;
    readonly total: string;
    /** `final` on what is left. */
    readonly weight: 'plain' | 'final';
  }[];
  /** Below the table. */
  readonly note: string;
}

export interface PaperSchedule {
  readonly heading: string;
  readonly heads: { readonly part: string; readonly due: string; readonly amount: string };
  readonly rows: readonly PaperScheduleRow[];
}

export interface PaperScheduleRow {
  readonly part: string;
  readonly due: string;
  readonly amount: string;
}

export interface PaperSection {
  readonly heading: string;
  readonly paragraphs: readonly string[];
}

/** How to pay, or that it was paid. */
export interface PaperPayment {
  readonly heading: string;
  readonly facts: readonly PaperFact[];
  readonly note: string | null;
}

/** Where the client signs, or the record of an acceptance that was given. */
export interface PaperAcceptance {
  readonly heading: string;
  readonly text: string;
  /** Where it can be accepted without paper. */
  readonly link: { readonly text: string; readonly address: string } | null;
  /** Labels under the lines to write on: "Place and date", "Name", "Signature". */
  readonly blanks: readonly string[];
  /** What is known already: accepted by, on, mark of what was accepted. */
  readonly facts: readonly PaperFact[];
}
