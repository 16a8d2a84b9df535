import type { InvoiceDocument } from '@scantling/quoting';
import type { z } from 'zod';
import { exampleDocument } from '../quotes/client-document.ts';
import type { invoiceSchema, invoiceSummarySchema, paymentSchema } from './invoice.ts';

const { workshop, client } = exampleDocument;

export const exampleInvoiceDocument: InvoiceDocument = {
  kind: 'deposit',
  number: 'INV-2026-0003',
  issuedOn: '2026-03-09',
  suppliedOn: null,
  dueOn: '2026-03-23',
  workshop,
  client: { ...client, taxNumber: '' },
  orderNumber: '',
  quoteNumber: 'Q-2026-0007',
  title: 'Two benches for the hall',
  what: 'On acceptance',
  note: '',
  currency: 'EUR',
  groups: [],
  contract: null,
  deducted: [],
  taxes: [
    {
      category: 'S',
      rate: '0.19',
      name: 'VAT 19 %',
      exemptionReason: '',
      net: '1000',
      taxAmount: '190',
    },
  ],
  net: '1000',
  tax: '190',
  total: '1190',
  credits: null,
};

export const exampleInvoiceSummary: z.input<typeof invoiceSummarySchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000060',
  kind: 'deposit',
  number: 'INV-2026-0003',
  state: 'part-paid',
  quoteId: '0193f6a0-7c11-7000-8000-000000000030',
  quoteNumber: 'Q-2026-0007',
  title: 'Two benches for the hall',
  clientId: '0193f6a0-7c11-7000-8000-000000000002',
  clientName: 'Greta Lindqvist (invented)',
  issuedOn: '2026-03-09',
  dueOn: '2026-03-23',
  daysOverdue: 0,
  currency: 'EUR',
  total: '1190',
  credited: '0',
  paid: '500',
  owed: '690',
  creditsId: null,
  paperId: '0193f6a0-7c11-7000-8000-000000000061',
  isDemo: false,
};

export const examplePayment: z.input<typeof paymentSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000062',
  amount: '500',
  receivedOn: '2026-03-16',
  method: 'bank transfer',
  reference: '',
  reversesId: null,
  reversedById: null,
  reason: '',
  receiptNumber: 'REC-2026-0002',
  receiptPaperId: '0193f6a0-7c11-7000-8000-000000000063',
  createdAt: '2026-03-16T09:30:00.000Z',
};

export const exampleMoney = (id: string, label: string, value: string) => ({
  id,
  label,
  unit: 'money' as const,
  currency: 'EUR' as const,
  value,
});
export const exampleBalance = {
  invoiced: 'invoiced',
  credited: 'credited',
  paid: 'paid',
  owed: 'owed',
  overpaid: 'overpaid',
};
export const exampleBalanceFigures = {
  invoiced: exampleMoney('invoiced', 'invoiced', '1190'),
  credited: exampleMoney('credited', 'credited', '0'),
  paid: exampleMoney('paid', 'paid', '500'),
  owed: exampleMoney('owed', 'owed', '690'),
  overpaid: exampleMoney('overpaid', 'paid too much', '0'),
};

export const exampleTotals = (under: string) => ({
  net: `${under}/net`,
  tax: `${under}/tax`,
  total: `${under}/total`,
});
export const exampleTotalsFigures = (under: string, net: string, tax: string, total: string) => ({
  [`${under}/net`]: exampleMoney(`${under}/net`, 'without tax', net),
  [`${under}/tax`]: exampleMoney(`${under}/tax`, 'tax', tax),
  [`${under}/total`]: exampleMoney(`${under}/total`, 'with tax', total),
});

export const exampleInvoice: z.input<typeof invoiceSchema> = {
  ...exampleInvoiceSummary,
  document: exampleInvoiceDocument,
  documentHash: 'a'.repeat(64),
  payments: [examplePayment],
  creditNotes: [],
  reminders: [],
  balance: exampleBalance,
  figures: exampleBalanceFigures,
  working: {
    whole: exampleTotals('contract'),
    before: exampleTotals('before'),
    left: exampleTotals('left'),
    own: { ...exampleTotals('own'), taxes: [] },
    figures: {
      ...exampleTotalsFigures('contract', '4000', '760', '4760'),
      ...exampleTotalsFigures('before', '0', '0', '0'),
      ...exampleTotalsFigures('left', '4000', '760', '4760'),
      ...exampleTotalsFigures('own', '1000', '190', '1190'),
    },
  },
};
