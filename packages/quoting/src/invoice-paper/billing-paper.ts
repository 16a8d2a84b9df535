import { formatPercent } from '@scantling/decimals';
import type { Currency } from '@scantling/money';
import type { BilledClient, TaxRow } from '../invoice/index.ts';
import {
  type Paper,
  type PaperFact,
  type PaperKind,
  type PaperWriters,
  paperAddressee,
  paperFacts,
  paperLetterhead,
  paperWriters,
  type TaxToWrite,
} from '../paper/index.ts';
import type { DocumentWorkshop } from '../quote/client-document.ts';

interface BillingDocument {
  readonly number: string;
  readonly workshop: DocumentWorkshop;
  readonly client: BilledClient;
  readonly title: string;
  readonly currency: Currency;
}

export function billingWriters({ workshop, currency }: BillingDocument): PaperWriters {
  const isLetter = workshop.paperSize === 'letter';
  return paperWriters({
    locale: isLetter ? 'en-US' : 'en-GB',
    currency,
    lengths: isLetter ? 'imperial' : 'metric',
  });
}

/** Blank lines part paragraphs. */
export function notes(...texts: readonly string[]): string[] {
  return texts
    .flatMap((text) => text.split(/\n\s*\n/))
    .map((text) => text.trim())
    .filter((text) => text !== '');
}

/** What all papers about money and deliveries share; each lays its own parts over it. */
export function billingPaper(
  document: BillingDocument,
  is: {
    readonly kind: PaperKind;
    readonly heading: string;
    readonly date: string;
    readonly facts: readonly (readonly [label: string, value: string | null])[];
  },
): Paper {
  const { number, workshop, client, title } = document;
  const { logo } = workshop;
  const tax: PaperFact[] = paperFacts([['Your tax number', client.taxNumber]]);
  return {
    kind: is.kind,
    size: workshop.paperSize,
    language: 'en',
    title: `${is.heading} ${number}: ${title}`,
    heading: is.heading,
    number,
    date: is.date,
    letterhead: paperLetterhead({
      ...workshop,
      email: workshop.email ?? '',
      web: workshop.website,
      logo: logo === null ? null : { sha256: logo.sha256, alternative: logo.alternativeText },
    }),
    addressee: paperAddressee(client),
    facts: [...paperFacts([['Number', number], ...is.facts]), ...tax],
    subject: title,
    intro: [],
    lines: null,
    totals: [],
    taxes: null,
    deducted: null,
    schedule: null,
    sections: [],
    payment: null,
    acceptance: null,
    pictures: [],
  };
}

/** Rows of tax as the paper's tables take them; a name that says its rate already is not followed by it again. */
export function taxesToWrite(rows: readonly TaxRow[]): TaxToWrite[] {
  return rows.map(({ name, rate, exemptionReason: reason, net: taxable, taxAmount: tax }) => {
    const says = name.replaceAll('\u00a0', ' ').includes(formatPercent(rate, 3).replaceAll('\u00a0', ' '));
    return { name, rate: says ? '0' : rate, reason, taxable, tax };
  });
}
