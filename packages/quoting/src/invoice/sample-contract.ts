import { type ClientDocument, documentTotals, statedTotals } from '../quote/client-document.ts';
import {
  type AgreedPart,
  type InvoiceWanted,
  type IssuedPaper,
  statedRows,
  workOutInvoice,
} from './index.ts';

const TAXES = [
  { id: 'full', category: 'S', rate: '0.19', name: 'VAT 19 %', exemptionReason: '' },
  { id: 'low', category: 'S', rate: '0.07', name: 'VAT 7 %', exemptionReason: '' },
  { id: 'none', category: 'E', rate: '0', name: 'Exempt', exemptionReason: 'because' },
] as const;

/** An accepted quote of one line a price, under 19 %, 7 % and no tax in turn, in euros. */
export function agreed(
  prices: readonly string[],
  priceMode: 'exclusive' | 'inclusive',
  id = 'one',
): AgreedPart {
  const lines = prices.map((price, at) => ({
    id: `line-${at}`,
    kind: 'free' as const,
    description: `Line ${at}`,
    details: '',
    quantity: '1',
    unit: 'piece',
    price,
    priceBase: '1',
    amount: price,
    tax: TAXES[at % TAXES.length]?.id ?? '',
    choice: { kind: 'included' as const },
    pictures: [],
  }));
  const document: ClientDocument = {
    kind: 'quote',
    number: `Q-${id}`,
    revision: 1,
    title: 'Benches',
    sentOn: '2026-03-01',
    validUntil: '2026-03-31',
    workshop: {
      name: 'Invented Joinery',
      addressLines: [],
      email: null,
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
    intro: '',
    currency: 'EUR',
    priceMode,
    taxes: TAXES,
    lines,
    discount: null,
    schedule: [
      { id: 'deposit', label: 'On acceptance', share: '0.3', due: 'on-acceptance' },
      { id: 'rest', label: 'On delivery', share: '0.7', due: 'on-delivery' },
    ],
    promisedOn: null,
    terms: '',
    pictures: [],
    totals: { sumOfLines: '0', discount: '0', taxes: [], net: '0', tax: '0', total: '0', schedule: [] },
  };
  return { id, document, chosen: [], totals: statedTotals(documentTotals(document, [])) };
}

/** Issues what is wanted after what was issued before. */
export function issue(
  parts: readonly AgreedPart[],
  before: IssuedPaper[],
  wanted: InvoiceWanted,
): IssuedPaper {
  const { own } = workOutInvoice({ currency: 'EUR', parts, before, wanted });
  const id = `paper-${before.length}`;
  const scheduled = wanted.kind === 'deposit' ? wanted : null;
  const paper: IssuedPaper = {
    id,
    kind: wanted.kind,
    number: id,
    issuedOn: '2026-03-02',
    creditsId: null,
    scheduled,
    taxes: statedRows(own.rows),
    total: own.total.value.toString(),
  };
  before.push(paper);
  return paper;
}

/** A repeatable sequence of numbers below `most` (Park and Miller's minimal standard, multiplier 16807). */
export function numbers(seed: number) {
  let at = seed;
  return (most: number) => {
    at = (at * 16807) % 2147483647;
    return at % most;
  };
}
