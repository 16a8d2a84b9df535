import { exclusiveTotals } from '@scantling/money';
import {
  type Paper,
  type PaperSize,
  paperAddressee,
  paperFacts,
  paperLetterhead,
  paperLines,
  paperSchedule,
  paperTaxes,
  paperTotals,
  type TotalsToWrite,
} from '@scantling/quoting';
import { american, irish, SAMPLE_CLIENT, SAMPLE_PHOTOGRAPH, SAMPLE_SENDER } from './sample-workshop.ts';

interface SampleSettings {
  readonly size: PaperSize;
  /** Lines besides the two of the seats. */
  readonly lines?: number;
  readonly hasLogo?: boolean;
}

const PRICE = '1860.5';
const SEAT_PRICE = '240';
const RATE = '0.0625';

/** A quote in either size, with options, alternates, pictures, tax, schedule, terms and acceptance. */
export function sampleQuote({ size, lines = 2, hasLogo = true }: SampleSettings): Paper {
  const writers = size === 'letter' ? american : irish;
  const bench = (at: number) => ({
    description: at % 3 === 1 ? 'Reading desk with a slanted top' : 'Hall bench in white oak, oiled',
    details: [
      `${writers.size(['1200.15', '450.85', '463.55'])}, with one drawer, hand-cut dovetails`,
      `Seat ${writers.length('44.45')} thick, from 8/4 stock`,
    ],
    quantity: writers.quantity('2', 'piece'),
    unitPrice: PRICE,
    amount: '3721',
  });
  const totals = exclusiveTotals({
    currency: size === 'letter' ? 'USD' : 'EUR',
    lines: [
      ...Array.from({ length: lines }, () => ({ category: 'S', rate: RATE, quantity: '2', netPrice: PRICE })),
      { category: 'S', rate: RATE, quantity: '2', netPrice: SEAT_PRICE },
      { category: 'E', rate: '0', quantity: '1', netPrice: '180' },
    ],
    allowances: [{ category: 'S', rate: RATE, amount: '120' }],
  });
  const reasons: Readonly<Record<string, readonly [name: string, reason: string]>> = {
    S: ['Sales tax', ''],
    E: ['Not taxed', 'Carriage that is charged apart is not taxed.'],
  };
  const toWrite: TotalsToWrite = {
    priceMode: 'exclusive',
    sumOfLines: totals.sumOfLines,
    discount: totals.allowanceTotal,
    net: totals.taxExclusive,
    taxes: totals.taxes.map((one) => {
      const [name, reason] = reasons[one.category] ?? ['Tax', ''];
      return { name, reason, rate: one.rate, taxable: one.taxable, tax: one.tax };
    }),
    total: totals.taxInclusive,
  };
  const seat = { quantity: writers.quantity('2', 'each'), unitPrice: SEAT_PRICE, amount: '480' };
  const deposit = totals.taxInclusive.times('0.4').toDecimalPlaces(2);
  return {
    kind: 'quote',
    size,
    language: 'en',
    title: 'Quote Q-2026-0007: benches for the reading hall',
    heading: 'Quote',
    number: 'Q-2026-0007',
    date: '2026-11-25',
    letterhead: paperLetterhead(hasLogo ? SAMPLE_SENDER : { ...SAMPLE_SENDER, logo: null }),
    addressee: paperAddressee(SAMPLE_CLIENT),
    facts: paperFacts([
      ['Number', 'Q-2026-0007'],
      ['Date', writers.date('2026-11-25')],
      ['Valid until', writers.date('2026-12-23')],
      ['Your enquiry', writers.date('2026-11-12')],
      ['Promised for', 'March 2027'],
    ]),
    subject: 'Benches for the reading hall',
    intro: [
      'Dear Ms Hartwright,',
      'thank you for showing us the hall. We are glad to offer the pieces below, made in our own workshop from boards that we choose ourselves.',
    ],
    lines: paperLines(
      [
        {
          lines: [
            ...Array.from({ length: lines }, (_, at) => bench(at)),
            { description: 'Carriage, and setting in place', quantity: '1', amount: '180' },
          ],
        },
        {
          heading: 'Wood of the seats',
          note: 'The first is in the total; choose the other where you prefer it.',
          areAlternates: true,
          lines: [
            {
              ...seat,
              description: 'Seats in white oak',
              mark: 'In the total',
              pictures: [SAMPLE_PHOTOGRAPH],
            },
            {
              ...seat,
              description: 'Seats in black walnut',
              unitPrice: '310',
              amount: '620',
              isCounted: false,
            },
          ],
        },
        {
          heading: 'Options',
          note: 'Not in the total; mark what you would like.',
          lines: [{ ...seat, description: 'Cushions in grey wool felt', mark: 'Option', isCounted: false }],
        },
      ],
      writers,
    ),
    totals: paperTotals(toWrite, writers),
    taxes: paperTaxes(toWrite, writers),
    deducted: null,
    schedule: paperSchedule(
      [
        { label: 'Deposit', share: '0.4', due: 'on acceptance', amount: deposit },
        { label: 'Rest', share: '0.6', due: 'before delivery', amount: totals.taxInclusive.minus(deposit) },
      ],
      writers,
    ),
    sections: [
      {
        heading: 'Delivery',
        paragraphs: [
          `Set in place by us. The way in has to be clear and ${writers.length('914.4')} wide or more.`,
        ],
      },
      {
        heading: 'Terms',
        paragraphs: [
          'Wood is grown: colour and grain differ from board to board and change with light.',
          'The pieces stay ours until they are paid in full.',
        ],
      },
    ],
    payment: null,
    acceptance: {
      heading: 'Acceptance',
      text: 'We accept this quote with the options marked above.',
      link: {
        text: 'Or choose and accept without paper',
        address: 'https://hollinfell.example/offers/mJ6wYkQyT2v0f7C1rX9pLhB4sZ8dNaGe',
      },
      blanks: ['Place and date', 'Name in capitals', 'Signature'],
      facts: [],
    },
    pictures: [SAMPLE_PHOTOGRAPH],
  };
}
