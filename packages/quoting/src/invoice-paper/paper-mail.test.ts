import { describe, expect, it } from 'vitest';
import type { InvoiceDocument } from '../invoice/index.ts';
import { agreed } from '../invoice/sample-contract.ts';
import { deliveryMail, invoiceMail, receiptMail } from './paper-mail.ts';

const { document: quoted } = agreed(['100'], 'exclusive');
const client = { ...quoted.client, taxNumber: '' };
const shared = { workshop: quoted.workshop, client, title: 'Two benches', currency: 'EUR' as const };
const INVOICE: InvoiceDocument = {
  ...shared,
  kind: 'deposit',
  number: 'INV-1',
  issuedOn: '2026-03-02',
  suppliedOn: null,
  dueOn: '2026-03-16',
  orderNumber: '',
  quoteNumber: 'Q-1',
  what: '',
  note: '',
  groups: [],
  contract: null,
  deducted: [],
  taxes: [],
  net: '100',
  tax: '19',
  total: '119',
  credits: null,
};

describe('a mail with a paper', () => {
  it('asks for payment of an invoice while something is owed on it', () => {
    const { subject, text } = invoiceMail(INVOICE, true);
    expect(subject).toBe('Deposit invoice INV-1: Two benches');
    expect(text).toBe(
      'Greta (invented),\n\nattached is our deposit invoice INV-1 for Two benches.\nPlease pay it by 2026-03-16.\n\nInvented Joinery',
    );
    expect(invoiceMail(INVOICE, false).text).not.toContain('pay it by');
  });

  it('says what a credit note takes back from, and never asks for money', () => {
    const credits = { number: 'INV-0', issuedOn: '2026-03-01' };
    const { text } = invoiceMail({ ...INVOICE, kind: 'credit-note', credits }, true);
    expect(text).toContain('It takes back from invoice INV-0.');
    expect(text).not.toContain('pay');
  });

  it('says what was received and what was handed over', () => {
    const receipt = {
      ...shared,
      number: 'REC-1',
      receivedOn: '2026-03-10',
      invoiceNumber: 'INV-1',
      amount: '119',
    };
    expect(receiptMail(receipt).text).toContain('for €119.00, received on 2026-03-10 for invoice INV-1.');
    const delivery = {
      ...shared,
      number: 'DN-1',
      deliveredOn: '2026-03-12',
      quoteNumber: 'Q-1',
      orderNumber: '',
      note: '',
      lines: [],
    };
    expect(deliveryMail(delivery).text).toContain('DN-1 for Two benches, handed over on 2026-03-12.');
  });

  it('has a subject that a mail takes, however long the title', () => {
    expect(invoiceMail({ ...INVOICE, title: 'b'.repeat(300) }, true).subject).toHaveLength(200);
  });
});
