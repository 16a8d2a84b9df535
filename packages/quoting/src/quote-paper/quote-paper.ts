import { decimal, formatPercent } from '@scantling/decimals';
import { minorUnits } from '@scantling/money';
import {
  type GroupToWrite,
  type LineToWrite,
  type Paper,
  type PaperPicture,
  type PaperSection,
  type PaperWriters,
  paperAddressee,
  paperFacts,
  paperLetterhead,
  paperLines,
  paperSchedule,
  paperTaxes,
  paperTotals,
  paperWriters,
  type TotalsToWrite,
} from '../paper/index.ts';
import type { ClientDocument, DocumentLine } from '../quote/client-document.ts';
import { lineUnit, quantityText } from '../quote/line-unit.ts';
import type { DueTime, ShownPicture } from '../quote/quote-draft.ts';

const DUE_WORDS: Readonly<Record<DueTime, string>> = {
  'on-acceptance': 'on acceptance',
  'during-work': 'during the work',
  'on-delivery': 'on delivery',
  'after-delivery': 'after delivery',
};

function paragraphs(text: string): string[] {
  return text
    .split(/\n\s*\n/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
}

function pictures(shown: readonly ShownPicture[]): PaperPicture[] {
  return shown.map(({ sha256, alternativeText }) => ({
    sha256,
    alternative: alternativeText,
    caption: null,
  }));
}

/** The price of one, where the line has one that can be paid: a batch has its price as a whole. */
function unitPrice({ price, priceBase }: DocumentLine, places: number): string | undefined {
  const one = decimal(price).div(decimal(priceBase));
  const isWhole = decimal(priceBase).eq(1) || one.decimalPlaces() <= places;
  return isWhole ? one.toString() : undefined;
}

function lineToWrite(
  line: DocumentLine,
  mark: string | undefined,
  isCounted: boolean,
  places: number,
): LineToWrite {
  const one = unitPrice(line, places);
  return {
    description: line.description,
    details: line.details === '' ? [] : line.details.split('\n'),
    quantity: line.kind === 'delivery' ? '1' : quantityText(line.quantity, lineUnit(line)),
    ...(one === undefined ? {} : { unitPrice: one }),
    amount: line.amount,
    ...(mark === undefined ? {} : { mark }),
    isCounted,
    pictures: pictures(line.pictures),
  };
}

function groupsOf({ lines, currency }: ClientDocument): GroupToWrite[] {
  const places = minorUnits(currency);
  const write = (line: DocumentLine, mark?: string, isCounted = true) =>
    lineToWrite(line, mark, isCounted, places);
  const included = lines.filter(({ choice }) => choice.kind === 'included');
  const options = lines.filter(({ choice }) => choice.kind === 'option');
  const names = lines.flatMap(({ choice }) => (choice.kind === 'alternate' ? [choice.group] : []));
  const alternates = [...new Set(names)].map((group): GroupToWrite => {
    const of = lines.filter(({ choice }) => choice.kind === 'alternate' && choice.group === group);
    return {
      heading: group,
      note: 'One of these; the one marked is in the total.',
      areAlternates: true,
      lines: of.map((line) =>
        line.choice.kind === 'alternate' && line.choice.isStandard
          ? write(line, 'In the total')
          : write(line, undefined, false),
      ),
    };
  });
  return [
    { lines: included.map((line) => write(line)) },
    ...alternates,
    {
      heading: 'Options',
      note: 'Not in the total; choose what you would like.',
      lines: options.map((line) => write(line, 'Option', false)),
    },
  ];
}

function totalsOf({ priceMode, totals, taxes }: ClientDocument): TotalsToWrite {
  return {
    priceMode,
    sumOfLines: totals.sumOfLines,
    discount: totals.discount,
    net: totals.net,
    taxes: totals.taxes.flatMap(({ id, net, tax }) => {
      const own = taxes.find((one) => one.id === id);
      if (own === undefined) return [];
      const { name, rate, exemptionReason: reason } = own;
      // A name that says its rate already is not followed by it again.
      const says = name.replaceAll('\u00a0', ' ').includes(formatPercent(rate, 3).replaceAll('\u00a0', ' '));
      return [{ name, rate: says ? '0' : rate, reason, taxable: net, tax }];
    }),
    total: totals.total,
  };
}

function sectionsOf(document: ClientDocument): PaperSection[] {
  const terms = paragraphs(document.terms);
  return terms.length === 0 ? [] : [{ heading: 'Terms', paragraphs: terms }];
}

function factsOf(document: ClientDocument, writers: PaperWriters) {
  const { number, revision, sentOn, validUntil, addsTo, promisedOn } = document;
  return paperFacts([
    ['Number', revision === 1 ? number : `${number}, revision ${revision}`],
    ['Date', writers.date(sentOn)],
    ['Valid until', writers.date(validUntil)],
    ['Adds to', addsTo === null ? null : `${addsTo.number}, accepted ${writers.date(addsTo.acceptedOn)}`],
    ['Promised for', promisedOn === null ? null : writers.date(promisedOn)],
  ]);
}

/**
 * The paper of a quote or an addition: the client's document, laid out. The client's secret link is not on it, since
 * papers are kept and passed on.
 */
export function quotePaper(document: ClientDocument): Paper {
  const { kind, number, title, workshop, totals, schedule, currency } = document;
  const isLetter = workshop.paperSize === 'letter';
  const writers = paperWriters({
    locale: isLetter ? 'en-US' : 'en-GB',
    currency,
    lengths: isLetter ? 'imperial' : 'metric',
  });
  const heading = kind === 'quote' ? 'Quote' : 'Addition to your order';
  const written = totalsOf(document);
  return {
    kind,
    size: workshop.paperSize,
    language: 'en',
    title: `${kind === 'quote' ? 'Quote' : 'Addition'} ${number}: ${title}`,
    heading,
    number,
    date: document.sentOn,
    letterhead: paperLetterhead({
      ...workshop,
      email: workshop.email ?? '',
      web: workshop.website,
      logo:
        workshop.logo === null
          ? null
          : { sha256: workshop.logo.sha256, alternative: workshop.logo.alternativeText },
    }),
    addressee: paperAddressee(document.client),
    facts: factsOf(document, writers),
    subject: title,
    intro: paragraphs(document.intro),
    lines: paperLines(groupsOf(document), writers),
    totals: paperTotals(written, writers),
    taxes: paperTaxes(written, writers),
    deducted: null,
    schedule: paperSchedule(
      schedule.map(({ id, label, share, due }) => ({
        label,
        share,
        due: DUE_WORDS[due],
        amount: totals.schedule.find((part) => part.id === id)?.amount ?? '0',
      })),
      writers,
    ),
    sections: sectionsOf(document),
    payment: null,
    acceptance: {
      heading: 'Acceptance',
      text:
        kind === 'quote'
          ? 'I accept this quote with the options marked above.'
          : 'I accept this addition; everything agreed before stays as it is.',
      link: null,
      blanks: ['Place and date', 'Name in capitals', 'Signature'],
      facts: [],
    },
    pictures: pictures(document.pictures),
  };
}
