import { describe, expect, it } from 'vitest';
import type { InvoiceDocument } from '../invoice/index.ts';
import { agreed } from '../invoice/sample-contract.ts';
import { invoicePaper } from './invoice-paper.ts';
import { receiptPaper } from './receipt-paper.ts';

const { document: quoted } = agreed(['100'], 'exclusive');
const client = { ...quoted.client, taxNumber: '' };
const row = (name: string, rate: string, net: string, taxAmount: string) => ({
  category: 'S',
  rate,
  name,
  exemptionReason: '',
  net,
  taxAmount,
});

// The sums of example 5 of the EN 16931 validation artefacts: 1500 at 25 % and 2500 at 12 %, half of it prepaid.
const FINAL: InvoiceDocument = {
  kind: 'final',
  number: 'INV-2',
  issuedOn: '2026-03-02',
  suppliedOn: '2026-03-02',
  dueOn: '2026-03-16',
  workshop: quoted.workshop,
  client,
  orderNumber: '',
  quoteNumber: 'Q-1',
  title: 'Benches',
  what: '',
  note: '',
  currency: 'DKK',
  groups: [],
  contract: {
    taxes: [row('VAT 25 %', '0.25', '1500', '375'), row('VAT 12 %', '0.12', '2500', '300')],
    net: '4000',
    tax: '675',
    total: '4675',
  },
  deducted: [
    { number: 'INV-1', kind: 'deposit', issuedOn: '2026-02-01', net: '2000', tax: '337.5', total: '2337.5' },
  ],
  taxes: [row('VAT 25 %', '0.25', '750', '187.5'), row('VAT 12 %', '0.12', '1250', '150')],
  net: '2000',
  tax: '337.5',
  total: '2337.5',
  credits: null,
};

describe('what was invoiced before', () => {
  it('stands in a table with its tax, and what is left by rate and in all', () => {
    const { deducted } = invoicePaper(FINAL);
    const written = deducted?.rows.map((one) =>
      [one.label, one.net, one.tax, one.total].join(' | ').replaceAll('\u00a0', ' '),
    );
    expect(written).toEqual([
      'Deposit invoice INV-1 of 1 February 2026 | DKK 2,000.00 | DKK 337.50 | DKK 2,337.50',
      'Left of it, VAT 25 % | DKK 750.00 | DKK 187.50 | DKK 937.50',
      'Left of it, VAT 12 % | DKK 1,250.00 | DKK 150.00 | DKK 1,400.00',
      'What is left, asked for here | DKK 2,000.00 | DKK 337.50 | DKK 2,337.50',
    ]);
    expect(deducted?.rows.map(({ weight }) => weight)).toEqual(['plain', 'plain', 'plain', 'final']);
  });

  it('has no table where nothing was', () => {
    expect(invoicePaper({ ...FINAL, deducted: [] }).deducted).toBeNull();
  });
});

describe('a receipt', () => {
  const receipt = (owedAfter: string) =>
    receiptPaper({
      number: 'R-1',
      receivedOn: '2026-03-10',
      workshop: quoted.workshop,
      client,
      invoiceNumber: 'INV-2',
      title: 'Benches',
      method: 'cash',
      reference: '',
      currency: 'EUR',
      amount: '100',
      owedAfter,
    });

  it('says that the invoice is settled, what is still open, or what was too much', () => {
    expect(receipt('0').intro.join(' ')).toContain('Invoice INV-2 is settled with it.');
    expect(receipt('0').totals).toHaveLength(1);
    expect(receipt('20').totals.map(({ label, value }) => [label, value])).toEqual([
      ['Still open', '€20.00'],
      ['Received', '€100.00'],
    ]);
    expect(receipt('-5').totals[0]).toMatchObject({ label: 'Paid too much', value: '€5.00' });
  });
});
