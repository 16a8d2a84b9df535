import { describe, expect, it } from 'vitest';
import { clientDocument } from '../quote/client-document.ts';
import { draftTotals } from '../quote/draft-totals.ts';
import type { DraftLine, QuoteDraft } from '../quote/quote-draft.ts';
import { quotePaper } from './quote-paper.ts';

const INCLUDED = { kind: 'included' } as const;
const wood = (isStandard: boolean) => ({ kind: 'alternate', group: 'Wood', isStandard }) as const;

function line(id: string, price: string, more: Partial<DraftLine> = {}): DraftLine {
  const common = { id, description: id, details: '', tax: 'full', choice: INCLUDED, pictures: [] };
  return { ...common, kind: 'free', quantity: '2', unit: 'm', price, cost: '1', ...more } as DraftLine;
}

const draft: QuoteDraft = {
  intro: 'Dear Greta,\n\nthank you.',
  currency: 'EUR',
  priceMode: 'exclusive',
  taxes: [{ id: 'full', category: 'S', rate: '0.2', name: 'VAT', exemptionReason: '' }],
  lines: [
    line('shelf', '40'),
    {
      kind: 'cost-sheet',
      id: 'benches',
      description: 'Benches',
      details: 'In oak\nOiled',
      tax: 'full',
      choice: INCLUDED,
      pictures: [{ sha256: 'b'.repeat(64), alternativeText: 'A bench' }],
      costSheetId: 'sheet',
      pieces: 3,
    },
    line('ash', '10', { choice: wood(true) }),
    line('walnut', '30', { choice: wood(false) }),
    line('lamp', '90', { choice: { kind: 'option' } }),
  ],
  discount: { kind: 'amount', amount: '100' },
  schedule: [
    { id: 'a', label: 'Deposit', share: '0.4', due: 'on-acceptance' },
    { id: 'b', label: 'Rest', share: '0.6', due: 'on-delivery' },
  ],
  promisedOn: '2026-06-12',
  validDays: 30,
  terms: 'One.\n\nTwo.',
  pictures: [],
};

function paperOf(paperSize: 'a4' | 'letter', change: Partial<QuoteDraft> = {}) {
  const given = { ...draft, ...change };
  const sheets = new Map([['benches', { costSheetId: 'sheet', title: 'Benches', netPrice: '1000' }]]);
  const document = clientDocument(given, draftTotals(given, sheets), {
    kind: 'addition',
    number: 'Q-2026-0001-A1',
    revision: 2,
    title: 'More benches',
    sentOn: '2026-03-01',
    validUntil: '2026-03-31',
    workshop: {
      name: 'Invented Joinery',
      addressLines: ['1 Plane Street'],
      email: null,
      phone: '',
      website: '',
      taxNumber: '',
      registration: '',
      bankLines: [],
      footer: '',
      logo: null,
      paperSize,
    },
    client: { name: 'Greta (invented)', addressLines: ['4 Mill Lane'] },
    addsTo: { number: 'Q-2026-0001', acceptedOn: '2026-02-01' },
  });
  return quotePaper(document);
}

const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ');

// What a quote shows: common practice, no source; the amounts follow from the draft above by hand.
describe('the paper of a quote', () => {
  it('has its lines in groups, and only what counts is carried into the total', () => {
    const { lines, totals, kind, number } = paperOf('a4');
    expect([kind, number]).toEqual(['addition', 'Q-2026-0001-A1']);
    const rows = lines?.groups.map(({ heading, lines: own }) => [
      heading,
      ...own.map((one) => [
        one.position,
        plain(one.quantity),
        plain(one.unitPrice),
        plain(one.amount),
        one.mark,
      ]),
    ]);
    expect(rows).toEqual([
      [null, ['1', '2 m', '€40.00', '€80.00', null], ['2', '3 pieces', undefined, '€1,000.00', null]],
      ['Wood', ['3a', '2 m', '€10.00', '€20.00', 'In the total'], ['3b', '2 m', '€30.00', '€60.00', null]],
      ['Options', ['4', '2 m', '€90.00', '€180.00', 'Option']],
    ]);
    expect(totals.map(({ label, value }) => `${plain(label)}: ${plain(value)}`)).toEqual([
      'Sum of lines: €1,100.00',
      'Discount: \u2212€100.00',
      'Total without tax: €1,000.00',
      'VAT 20 %: €200.00',
      'Total: €1,200.00',
    ]);
  });

  it('says when it was sent, how long it holds, what it adds to and when each part is due', () => {
    const { facts, schedule, intro, sections } = paperOf('a4');
    expect(facts.map(({ label, value }) => [label, plain(value)])).toEqual([
      ['Number', 'Q-2026-0001-A1, revision 2'],
      ['Date', '1 March 2026'],
      ['Valid until', '31 March 2026'],
      ['Adds to', 'Q-2026-0001, accepted 1 February 2026'],
      ['Promised for', '12 June 2026'],
    ]);
    expect(schedule?.rows.map(({ due, amount }) => [due, plain(amount)])).toEqual([
      ['on acceptance', '€480.00'],
      ['on delivery', '€720.00'],
    ]);
    expect(intro).toEqual(['Dear Greta,', 'thank you.']);
    expect(sections).toEqual([{ heading: 'Terms', paragraphs: ['One.', 'Two.'] }]);
  });

  it('is written as its size’s readers are used to, and says a rate once', () => {
    const letter = paperOf('letter', {
      taxes: [{ id: 'full', category: 'S', rate: '0.2', name: 'Sales tax 20 %', exemptionReason: '' }],
    });
    expect(letter.size).toBe('letter');
    expect(plain(letter.facts[1]?.value)).toBe('March 1, 2026');
    expect(letter.totals.map(({ label }) => plain(label))).toContain('Sales tax 20 %');
  });

  it('keeps the client’s link to itself', () => {
    expect(JSON.stringify(paperOf('a4'))).not.toContain('offers/');
  });
});
