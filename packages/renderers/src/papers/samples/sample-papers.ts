import {
  type Paper,
  paperAddressee,
  paperFacts,
  paperLetterhead,
  paperLines,
  paperPayment,
  paperTotals,
  type TotalsToWrite,
} from '@scantling/quoting';
import { irish, SAMPLE_CLIENT, SAMPLE_SENDER } from './sample-workshop.ts';

const { money, date, quantity } = irish;

/** What the papers below share; each says what differs. */
const BLANK: Paper = {
  kind: 'invoice',
  size: 'a4',
  language: 'en',
  title: 'Invoice',
  heading: 'Invoice',
  number: 'INV-2026-0003',
  date: '2026-12-01',
  letterhead: paperLetterhead(SAMPLE_SENDER),
  addressee: paperAddressee(SAMPLE_CLIENT),
  facts: [],
  subject: 'Benches for the reading hall',
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

const FINAL: TotalsToWrite = {
  priceMode: 'exclusive',
  sumOfLines: '4000',
  discount: '0',
  net: '4000',
  taxes: [{ name: 'VAT', rate: '0.23', taxable: '4000', tax: '920', reason: '' }],
  total: '4920',
  prepaid: [{ label: 'Deposit, invoice INV-2026-0003', amount: '1968' }],
  payable: '2952',
};
const BENCHES = {
  description: 'Hall bench in white oak, oiled',
  quantity: quantity('2', 'piece'),
  unitPrice: '2000',
  amount: '4000',
};

export const SAMPLE_ADDITION: Paper = {
  ...BLANK,
  kind: 'addition',
  title: 'Change 1 to order Q-2026-0007',
  heading: 'Change to your order',
  number: 'Q-2026-0007 / change 1',
  facts: paperFacts([
    ['Change', '1'],
    ['To order', 'Q-2026-0007'],
    ['Accepted', date('2026-11-27')],
    ['Date', date('2026-12-01')],
  ]),
  intro: [
    'You asked for one drawer more. It comes on top of what was agreed; everything else stays as it is.',
  ],
  lines: paperLines(
    [
      {
        lines: [
          {
            description: 'One drawer more',
            quantity: quantity('1', 'piece'),
            unitPrice: '260',
            amount: '260',
          },
        ],
      },
    ],
    irish,
  ),
  totals: paperTotals(
    {
      ...FINAL,
      sumOfLines: '260',
      net: '260',
      taxes: [{ name: 'VAT', rate: '0.23', taxable: '260', tax: '59.8', reason: '' }],
      total: '319.8',
      prepaid: [],
    },
    irish,
    { total: 'On top of the order', payable: '' },
  ),
  acceptance: {
    heading: 'Accepted',
    text: 'This change was accepted without paper.',
    link: null,
    blanks: [],
    facts: [
      { label: 'By', value: 'Odile Hartwright' },
      { label: 'On', value: `${date('2026-12-02')}, 14:05 UTC` },
      {
        label: 'Mark of the text',
        value: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
      },
    ],
  },
};

export const SAMPLE_INVOICE: Paper = {
  ...BLANK,
  title: 'Invoice INV-2026-0009',
  number: 'INV-2026-0009',
  facts: paperFacts([
    ['Number', 'INV-2026-0009'],
    ['Date', date('2027-03-15')],
    ['Delivered', date('2027-03-12')],
    ['Quote', 'Q-2026-0007'],
  ]),
  date: '2027-03-15',
  lines: paperLines([{ lines: [BENCHES] }], irish),
  totals: paperTotals(FINAL, irish),
  payment: paperPayment(
    {
      amount: '2952',
      dueOn: '2027-03-29',
      reference: 'INV-2026-0009',
      bankLines: SAMPLE_SENDER.bankLines,
      note: 'Thank you for your commission.',
    },
    irish,
  ),
};

export const SAMPLE_CREDIT_NOTE: Paper = {
  ...BLANK,
  kind: 'credit-note',
  title: 'Credit note CN-2027-0001',
  heading: 'Credit note',
  number: 'CN-2027-0001',
  facts: paperFacts([
    ['Number', 'CN-2027-0001'],
    ['Date', date('2026-12-01')],
    ['For invoice', 'INV-2026-0009'],
  ]),
  lines: paperLines([{ lines: [{ ...BENCHES, quantity: quantity('1', 'piece'), amount: '2000' }] }], irish),
  totals: paperTotals(
    {
      ...FINAL,
      sumOfLines: '2000',
      net: '2000',
      taxes: [{ name: 'VAT', rate: '0.23', taxable: '2000', tax: '460', reason: '' }],
      total: '2460',
      prepaid: [],
    },
    irish,
    { total: 'Credited', payable: '' },
  ),
};

export const SAMPLE_RECEIPT: Paper = {
  ...BLANK,
  kind: 'receipt',
  title: 'Receipt R-2026-0002',
  heading: 'Receipt',
  number: 'R-2026-0002',
  facts: paperFacts([
    ['Number', 'R-2026-0002'],
    ['Date', date('2026-12-01')],
  ]),
  intro: ['We have received your payment with thanks.'],
  totals: [{ label: 'Received', value: money('1968'), weight: 'final' }],
  payment: {
    heading: 'Payment',
    facts: [
      { label: 'Received on', value: date('2026-11-30') },
      { label: 'By', value: 'bank transfer' },
      { label: 'For', value: 'Deposit, invoice INV-2026-0003' },
      { label: 'Still owed', value: money('2952') },
    ],
    note: null,
  },
};

export const SAMPLE_DELIVERY_NOTE: Paper = {
  ...BLANK,
  kind: 'delivery-note',
  title: 'Delivery note D-2027-0004',
  heading: 'Delivery note',
  number: 'D-2027-0004',
  facts: paperFacts([
    ['Number', 'D-2027-0004'],
    ['Date', date('2026-12-01')],
    ['Order', 'Q-2026-0007'],
  ]),
  lines: paperLines(
    [
      {
        lines: [
          {
            description: 'Hall bench in white oak, oiled',
            quantity: quantity('2', 'piece'),
            details: ['Nos. 1 and 2 of 2'],
          },
          { description: 'Oil and cloth for care', quantity: quantity('1', 'pack') },
        ],
      },
    ],
    irish,
  ),
  sections: [{ heading: 'Care', paragraphs: ['Keep the pieces away from radiators for the first winter.'] }],
  acceptance: {
    heading: 'Received',
    text: 'Received complete and without visible damage, save for what is noted here.',
    link: null,
    blanks: ['Place and date', 'Name in capitals', 'Signature'],
    facts: [],
  },
};

/** One of each kind besides the quote, all A4. */
export const SAMPLE_PAPERS: readonly Paper[] = [
  SAMPLE_ADDITION,
  SAMPLE_INVOICE,
  SAMPLE_CREDIT_NOTE,
  SAMPLE_RECEIPT,
  SAMPLE_DELIVERY_NOTE,
];
