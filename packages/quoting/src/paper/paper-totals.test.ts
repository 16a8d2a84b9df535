import { exclusiveTotals, inclusiveTotals } from '@scantling/money';
import { describe, expect, it } from 'vitest';
import { paperWriters } from './paper-style.ts';
import { paperFacts, paperTaxes, paperTotals, type TotalsToWrite } from './paper-totals.ts';

const writers = paperWriters({ locale: 'en-IE', currency: 'EUR', lengths: 'metric' });
const shown = (totals: TotalsToWrite) =>
  paperTotals(totals, writers).map(({ label, value, weight }) => [
    label.replaceAll('\u00a0', ' '),
    value,
    weight,
  ]);

const reason = '';
const exclusive = exclusiveTotals({
  currency: 'EUR',
  lines: [
    { category: 'S', rate: '0.25', quantity: '2', netPrice: '400' },
    { category: 'Z', rate: '0', quantity: '1', netPrice: '300' },
  ],
  allowances: [{ category: 'S', rate: '0.25', amount: '100' }],
  prepaid: '500',
});

describe('the totals of a paper', () => {
  it('go from the lines by discount and tax to the total', () => {
    const totals: TotalsToWrite = {
      priceMode: 'exclusive',
      sumOfLines: exclusive.sumOfLines,
      discount: exclusive.allowanceTotal,
      net: exclusive.taxExclusive,
      taxes: exclusive.taxes.map((one) => ({ name: 'VAT', reason, ...one })),
      total: exclusive.taxInclusive,
    };
    expect(shown(totals)).toEqual([
      ['Sum of lines', '€1,100.00', 'plain'],
      ['Discount', '\u2212€100.00', 'plain'],
      ['Total without tax', '€1,000.00', 'sum'],
      ['VAT 25 %', '€175.00', 'plain'],
      ['Total', '€1,175.00', 'final'],
    ]);
    const prepaid = [{ label: 'Deposit', amount: '500' }];
    expect(shown({ ...totals, prepaid, payable: exclusive.payable }).slice(-3)).toEqual([
      ['Total', '€1,175.00', 'sum'],
      ['Deposit', '\u2212€500.00', 'plain'],
      ['To pay', '€675.00', 'final'],
    ]);
    const rows = paperTaxes(totals, writers)?.rows ?? [];
    expect(rows.map(({ taxable, tax }) => [taxable, tax])).toEqual([
      ['€700.00', '€175.00'],
      ['€300.00', '€0.00'],
    ]);
  });

  it('say which tax prices hold that include it', () => {
    const worked = inclusiveTotals({
      currency: 'EUR',
      lines: [{ category: 'S', rate: '0.19', quantity: '1', grossPrice: '1190' }],
    });
    const totals: TotalsToWrite = {
      priceMode: 'inclusive',
      sumOfLines: '1190',
      discount: worked.discount,
      net: worked.taxExclusive,
      taxes: worked.taxes.map(({ rate, net, tax }) => ({ name: 'VAT', rate, taxable: net, tax, reason })),
      total: worked.taxInclusive,
    };
    expect(shown(totals)).toEqual([
      ['Including VAT 19 %', '€190.00', 'plain'],
      ['Total', '€1,190.00', 'final'],
    ]);
    expect(paperTaxes(totals, writers)?.rows[0]?.taxable).toBe('€1,000.00');
  });

  it('leave the table of tax out where one line says it all, and give reasons where there are any', () => {
    const tax = { name: 'Sales tax', rate: '0.07', taxable: '100', tax: '7', reason: '' };
    const totals: TotalsToWrite = {
      priceMode: 'exclusive',
      sumOfLines: '100',
      discount: '0',
      net: '100',
      taxes: [tax],
      total: '107',
    };
    expect(paperTaxes(totals, writers)).toBeNull();
    const exempt = { ...tax, rate: '0', tax: '0', name: 'Exempt', reason: 'Made for export.' };
    const table = paperTaxes({ ...totals, taxes: [exempt], total: '100' }, writers);
    expect(table?.rows).toEqual([
      { category: 'Exempt', taxable: '€100.00', tax: '€0.00', note: 'Made for export.' },
    ]);
    expect(shown({ ...totals, taxes: [exempt], total: '100' })).toEqual([['Total', '€100.00', 'final']]);
  });
});

it('facts that are not known are left out', () => {
  const facts = [
    ['Number', 'Q-1'],
    ['Promised for', null],
    ['Your sign', '  '],
  ] as const;
  expect(paperFacts(facts)).toEqual([{ label: 'Number', value: 'Q-1' }]);
});
