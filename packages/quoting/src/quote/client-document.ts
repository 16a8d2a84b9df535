import type { Currency } from '@scantling/money';
import {
  type Discount,
  type LineChoice,
  type PriceMode,
  type QuoteTax,
  type QuoteTotals,
  quoteTotals,
} from '../quote-totals/index.ts';
import type { DraftLine, DraftPart, QuoteDraft, QuoteKind, ShownPicture } from './quote-draft.ts';

/** Who offers, as the letterhead said when it was sent. */
export interface DocumentWorkshop {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly email: string | null;
  readonly phone: string;
  readonly website: string;
  readonly taxNumber: string;
  readonly registration: string;
  readonly bankLines: readonly string[];
  readonly footer: string;
  readonly logo: ShownPicture | null;
  readonly paperSize: 'a4' | 'letter';
}

export interface DocumentLine {
  readonly id: string;
  readonly kind: DraftLine['kind'];
  readonly description: string;
  readonly details: string;
  readonly quantity: string;
  readonly unit: string;
  /** For `priceBase` of them; with tax where the document's prices hold it. */
  readonly price: string;
  readonly priceBase: string;
  /** What the line comes to. */
  readonly amount: string;
  readonly tax: string;
  readonly choice: LineChoice;
  readonly pictures: readonly ShownPicture[];
}

/** Totals as decimal text, for one set of choices. */
export interface StatedTotals {
  readonly sumOfLines: string;
  readonly discount: string;
  readonly taxes: readonly { readonly id: string; readonly net: string; readonly tax: string }[];
  readonly net: string;
  readonly tax: string;
  readonly total: string;
  readonly schedule: readonly { readonly id: string; readonly amount: string }[];
}

/**
 * What the client is offered, whole: the frozen text of a sent revision, of which the paper and the page behind the
 * client's link are made. It holds no cost and nothing else of ours.
 */
export interface ClientDocument {
  readonly kind: QuoteKind;
  readonly number: string;
  readonly revision: number;
  readonly title: string;
  readonly sentOn: string;
  readonly validUntil: string;
  readonly workshop: DocumentWorkshop;
  readonly client: { readonly name: string; readonly addressLines: readonly string[] };
  /** The accepted offer that an addition comes on top of. */
  readonly addsTo: { readonly number: string; readonly acceptedOn: string } | null;
  readonly intro: string;
  readonly currency: Currency;
  readonly priceMode: PriceMode;
  readonly taxes: readonly QuoteTax[];
  readonly lines: readonly DocumentLine[];
  readonly discount: Discount | null;
  readonly schedule: readonly DraftPart[];
  readonly promisedOn: string | null;
  readonly terms: string;
  readonly pictures: readonly ShownPicture[];
  /** With nothing chosen. */
  readonly totals: StatedTotals;
}

/** What the document says besides the draft: who, when, under which number. */
export type DocumentFacts = Pick<
  ClientDocument,
  'kind' | 'number' | 'revision' | 'title' | 'sentOn' | 'validUntil' | 'workshop' | 'client' | 'addsTo'
>;

export function statedTotals(totals: QuoteTotals): StatedTotals {
  return {
    sumOfLines: totals.sumOfLines.value.toString(),
    discount: totals.discount.value.toString(),
    taxes: totals.categories.map(({ tax, net, taxAmount }) => ({
      id: tax.id,
      net: net.value.toString(),
      tax: taxAmount.value.toString(),
    })),
    net: totals.net.value.toString(),
    tax: totals.tax.value.toString(),
    total: totals.total.value.toString(),
    schedule: totals.schedule.map(({ part, amount }) => ({ id: part.id, amount: amount.value.toString() })),
  };
}

/** The client's document of a draft whose totals have been worked out with nothing chosen. */
export function clientDocument(draft: QuoteDraft, totals: QuoteTotals, facts: DocumentFacts): ClientDocument {
  const { intro, currency, priceMode, taxes, discount, schedule, promisedOn, terms } = draft;
  const lines = draft.lines.flatMap((line): DocumentLine[] => {
    const worked = totals.lines.find((one) => one.line.id === line.id);
    if (worked === undefined) return [];
    return [
      {
        id: line.id,
        kind: line.kind,
        description: line.description,
        details: line.details,
        quantity: worked.line.quantity,
        unit: line.kind === 'free' ? line.unit : '',
        price: worked.price.value.toString(),
        priceBase: worked.line.priceBase ?? '1',
        amount: worked.amount.value.toString(),
        tax: line.tax,
        choice: line.choice,
        pictures: line.pictures,
      },
    ];
  });
  return {
    ...facts,
    intro,
    currency,
    priceMode,
    taxes,
    lines,
    discount,
    schedule,
    promisedOn,
    terms,
    pictures: draft.pictures,
    totals: statedTotals(totals),
  };
}

/** What a document comes to with these options and alternates. @throws QuotingInputError where a choice cannot be */
export function documentTotals(
  document: Pick<ClientDocument, 'currency' | 'priceMode' | 'taxes' | 'lines' | 'discount' | 'schedule'>,
  chosen: readonly string[],
): QuoteTotals {
  const { currency, priceMode, taxes, discount, schedule } = document;
  const lines = document.lines.map(({ id, description: label, quantity, price, priceBase, tax, choice }) => ({
    id,
    label,
    quantity,
    price,
    priceBase,
    tax,
    choice,
  }));
  return quoteTotals({ currency, priceMode, taxes, lines, chosen, discount, schedule });
}
