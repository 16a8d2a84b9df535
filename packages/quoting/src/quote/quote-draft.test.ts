import { entered, input } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { canonicalText } from './canonical-text.ts';
import { clientDocument, type DocumentFacts, documentTotals, statedTotals } from './client-document.ts';
import { draftTotals, type SheetPrice } from './draft-totals.ts';
import type { QuoteDraft } from './quote-draft.ts';
import { quoteMargin } from './quote-margin.ts';

const INCLUDED = { kind: 'included' } as const;
const wood = (isStandard: boolean) => ({ kind: 'alternate', group: 'wood', isStandard }) as const;
const draft: QuoteDraft = {
  intro: 'Thank you for asking.',
  currency: 'EUR',
  priceMode: 'exclusive',
  taxes: [{ id: 'full', category: 'S', rate: '0.2', name: 'VAT 20 %', exemptionReason: '' }],
  lines: [
    {
      id: 'bench',
      kind: 'cost-sheet',
      costSheetId: 'sheet-1',
      pieces: 3,
      description: 'Hall bench',
      details: '',
      tax: 'full',
      choice: wood(true),
      pictures: [{ sha256: 'a'.repeat(64), alternativeText: 'A bench in a hall' }],
    },
    {
      id: 'walnut',
      kind: 'free',
      quantity: '3',
      unit: 'piece',
      price: '500',
      cost: '900',
      description: 'Hall bench in walnut',
      details: '',
      tax: 'full',
      choice: wood(false),
      pictures: [],
    },
    {
      id: 'van',
      kind: 'delivery',
      price: '60',
      cost: null,
      description: 'Delivery',
      details: '',
      tax: 'full',
      choice: INCLUDED,
      pictures: [],
    },
  ],
  discount: { kind: 'share', share: '0.05' },
  schedule: [
    { id: 'first', label: 'Deposit', share: '0.3', due: 'on-acceptance' },
    { id: 'rest', label: 'On delivery', share: '0.7', due: 'on-delivery' },
  ],
  promisedOn: '2026-06-01',
  validDays: 30,
  terms: 'Wood moves.',
  pictures: [],
};
const sheets = new Map<string, SheetPrice>([
  ['bench', { costSheetId: 'sheet-1', title: 'Benches', netPrice: '1000' }],
]);
const facts: DocumentFacts = {
  kind: 'quote',
  number: 'Q-2026-0001',
  revision: 1,
  title: 'Three benches',
  sentOn: '2026-03-01',
  validUntil: '2026-03-31',
  workshop: {
    name: 'Invented Joinery',
    addressLines: ['1 Plane Street'],
    email: 'shop@joinery.example',
    phone: '',
    website: '',
    taxNumber: '',
    registration: '',
    bankLines: [],
    footer: '',
    logo: null,
    paperSize: 'a4',
  },
  client: { name: 'Greta (invented)', addressLines: [] },
  addsTo: null,
};
const documentOf = (of: QuoteDraft) => clientDocument(of, draftTotals(of, sheets), facts);
const money = (key: string, value: string) =>
  input({ key, label: key, unit: 'money', value, currency: 'EUR', source: entered() });

// Expected amounts are worked by hand from the draft above.
describe('a draft', () => {
  it('takes the price of a batch from its cost sheet, to the cent', () => {
    const totals = draftTotals(draft, sheets);
    expect(totals.lines[0]?.amount.value.toString()).toBe('1000');
    expect(statedTotals(totals)).toEqual({
      sumOfLines: '1060',
      discount: '53',
      taxes: [{ id: 'full', net: '1007', tax: '201.4' }],
      net: '1007',
      tax: '201.4',
      total: '1208.4',
      schedule: [
        { id: 'first', amount: '362.52' },
        { id: 'rest', amount: '845.88' },
      ],
    });
    const inclusive = draftTotals({ ...draft, priceMode: 'inclusive' }, sheets);
    expect(inclusive.lines[0]?.amount.value.toString()).toBe('1200');
  });

  it('names the line whose cost sheet is gone', () => {
    expect(() => draftTotals(draft, new Map())).toThrow('lines.0.costSheetId names no cost sheet');
  });

  it('shows us what it leaves, line by line and whole', () => {
    const margin = quoteMargin(
      draftTotals(draft, sheets),
      new Map([
        ['bench', { cost: money('bench', '700'), bought: money('wood', '320') }],
        ['walnut', { cost: money('walnut', '900'), bought: money('walnut-bought', '0') }],
      ]),
      draft,
    );
    expect(margin.lines.map((line) => line.margin?.value.toString() ?? null)).toEqual(['0.3', '0.4', null]);
    expect([margin.cost, margin.profit, margin.bought].map(({ value }) => value.toString())).toEqual([
      '700',
      '307',
      '320',
    ]);
    expect(margin.linesWithoutCost).toEqual(['van']);
    // 362.52 x 1007 / 1208.4 = 302.1, which does not pay for 320.
    expect(margin.depositWithoutTax.value.toDecimalPlaces(6).toString()).toBe('302.1');
    expect(margin.isDepositShort).toBe(true);
  });

  it("tells what an hour of the owner's brings, as the cost sheet reckons it", () => {
    const hours = input({ key: 'hours', label: 'hours', unit: 'h', value: '10', source: entered() });
    const bench = {
      cost: money('bench', '700'),
      bought: money('wood', '320'),
      owner: { hours, labour: money('labour', '250') },
    };
    const totals = draftTotals(draft, sheets);
    // (1007 - (700 - 250)) / 10
    expect(quoteMargin(totals, new Map([['bench', bench]]), draft).hourlyEarnings?.value.toString()).toBe(
      '55.7',
    );
    const { owner: _, ...unknown } = bench;
    expect(quoteMargin(totals, new Map([['bench', unknown]]), draft).hourlyEarnings).toBeNull();
  });

  it('takes the tax out of inclusive prices before it measures a margin', () => {
    const inclusive = { ...draft, priceMode: 'inclusive' as const };
    const margin = quoteMargin(
      draftTotals(inclusive, sheets),
      new Map([['bench', { cost: money('bench', '700'), bought: money('wood', '3') }]]),
      inclusive,
    );
    expect(margin.lines[0]?.net.value.toString()).toBe('1000');
    expect(margin.isDepositShort).toBe(false);
  });

  it('has no margin on nothing', () => {
    const empty = { ...draft, lines: [], discount: null };
    const margin = quoteMargin(draftTotals(empty, sheets), new Map(), empty);
    expect([margin.margin, margin.cost.value.toString(), margin.isDepositShort]).toEqual([null, '0', false]);
  });
});

describe("the client's document", () => {
  it('comes to the same as the draft, and again with what is chosen', () => {
    const document = documentOf(draft);
    expect(statedTotals(documentTotals(document, []))).toEqual(document.totals);
    expect(documentTotals(document, ['walnut']).net.value.toString()).toBe('1482');
    const inclusive = documentOf({ ...draft, priceMode: 'inclusive' });
    expect(inclusive.lines[0]).toMatchObject({ price: '1200', priceBase: '3', amount: '1200' });
    expect(statedTotals(documentTotals(inclusive, []))).toEqual(inclusive.totals);
  });

  it('holds pictures by their bytes, and no cost', () => {
    const document = documentOf(draft);
    expect(document.lines[0]?.pictures).toEqual(draft.lines[0]?.pictures);
    const other = documentOf({
      ...draft,
      lines: draft.lines.map((line) => (line.kind === 'cost-sheet' ? line : { ...line, cost: '123456' })),
    });
    expect(canonicalText(other)).toBe(canonicalText(document));
    expect(canonicalText(document)).not.toMatch(/cost(?!-sheet")|sheet-1/);
  });
});
