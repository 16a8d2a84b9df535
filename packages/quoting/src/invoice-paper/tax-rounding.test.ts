import { describe, expect, it } from 'vitest';
import type { InvoiceDocument } from '../invoice/index.ts';
import { agreed } from '../invoice/sample-contract.ts';
import { invoicePaper } from './invoice-paper.ts';
import { taxRoundingWords } from './tax-rounding.ts';

const { document: quoted } = agreed(['100'], 'exclusive');
const row = (net: string, taxAmount: string) => ({
  category: 'S',
  rate: '0.19',
  name: 'VAT 19 %',
  exemptionReason: '',
  net,
  taxAmount,
});
const DEPOSIT: InvoiceDocument = {
  kind: 'deposit',
  number: 'INV-1',
  issuedOn: '2026-03-02',
  suppliedOn: null,
  dueOn: '2026-03-16',
  workshop: quoted.workshop,
  client: { ...quoted.client, taxNumber: '' },
  orderNumber: '',
  quoteNumber: 'Q-1',
  title: 'Benches',
  what: 'On acceptance',
  note: '',
  currency: 'EUR',
  groups: [],
  contract: null,
  deducted: [],
  taxes: [row('84.03', '15.97')],
  net: '84.03',
  tax: '15.97',
  total: '100',
  credits: null,
};
const said = (document: InvoiceDocument) => taxRoundingWords(document).join(' ').replaceAll('\u00a0', ' ');

describe('how the tax is rounded', () => {
  it('is not told where the tax is its rate of the net: 0.19 x 84.03 = 15.9657', () => {
    expect(said(DEPOSIT)).toBe('');
    expect(invoicePaper(DEPOSIT).sections).toEqual([]);
  });

  // 0.19 x 0.02 = 0.0038: 0.03 with tax has no net whose tax by the rule makes it up (0.02 + 0.00, 0.03 + 0.01).
  it('is told where an agreed amount has no such net, on the paper too', () => {
    const off = { ...DEPOSIT, taxes: [row('0.03', '0')], net: '0.03', tax: '0', total: '0.03' };
    expect(said(off)).toMatch(/^VAT 19 %: the tax of €0\.00 is €0\.01 less than 19 % of €0\.03\. .*agreed/);
    const [section] = invoicePaper(off).sections;
    expect(section?.heading).toBe('How the tax is rounded');
  });

  it('tells of a final invoice what is left, and why all together are right', () => {
    const final: InvoiceDocument = {
      ...DEPOSIT,
      kind: 'final',
      contract: { taxes: [row('1000', '190')], net: '1000', tax: '190', total: '1190' },
      deducted: [
        {
          number: 'INV-0',
          kind: 'part',
          issuedOn: '2026-03-01',
          net: '999.98',
          tax: '190',
          total: '1189.98',
        },
      ],
      taxes: [row('0.05', '0.02')],
      net: '0.05',
      tax: '0.02',
      total: '0.07',
    };
    expect(said(final)).toBe(
      'VAT 19 %, what is left: the tax of €0.02 is €0.01 more than 19 % of €0.05. Order and earlier invoices were each rounded on their own; all invoices together come to the tax of the order.',
    );
  });

  it('tells of a credit note that an amount with tax is given back', () => {
    expect(said({ ...DEPOSIT, kind: 'credit-note', taxes: [row('0.03', '0')] })).toMatch(/given back/);
  });
});
