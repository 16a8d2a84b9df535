import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import type { InvoiceWanted, IssuedPaper, TaxRow } from './index.ts';
import { type AgreedPart, statedRows, workOutCredit, workOutInvoice } from './index.ts';
import { agreed, issue, numbers } from './sample-contract.ts';
import { takeFrom } from './take-from.ts';
import { readTaxRows } from './taxed-amount.ts';

const add = (papers: readonly IssuedPaper[], pick: (row: TaxRow) => string) =>
  papers
    .flatMap(({ taxes }) => taxes)
    .reduce((sum, row) => sum.plus(pick(row)), decimal(0))
    .toString();

describe.each(['exclusive', 'inclusive'] as const)('invoices of a contract with %s prices', (mode) => {
  it('come to it to the cent: deposit, parts and final, without tax, tax and with tax', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const next = numbers(seed);
      const prices = Array.from({ length: 1 + next(5) }, () => `${next(9000) + 100}.${10 + next(90)}`);
      const parts = [agreed(prices, mode), agreed([`${next(500) + 1}.37`], mode, 'two')];
      const before: IssuedPaper[] = [];
      issue(parts, before, { kind: 'deposit', revisionId: 'one', partId: 'deposit' });
      issue(parts, before, { kind: 'part', share: `0.${10 + next(20)}` });
      issue(parts, before, { kind: 'part', amount: `${1 + next(20)}.${10 + next(90)}` });
      issue(parts, before, { kind: 'final' });
      const whole = (pick: (totals: AgreedPart['totals']) => string) =>
        parts.reduce((sum, { totals }) => sum.plus(pick(totals)), decimal(0)).toString();
      expect(add(before, ({ net }) => net)).toBe(whole(({ net }) => net));
      expect(add(before, ({ taxAmount }) => taxAmount)).toBe(whole(({ tax }) => tax));
      for (const { taxes } of before)
        for (const row of taxes) {
          const off = decimal(row.net).times(row.rate).minus(row.taxAmount).abs();
          expect(off.lte('0.04'), `seed ${seed}: tax ${row.taxAmount} on ${row.net}`).toBe(true);
        }
    }
  });

  it('are credited up to what they ask for and no further', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const next = numbers(seed);
      const parts = [agreed([`${next(900) + 100}.99`, `${next(300) + 50}.01`], mode)];
      const before: IssuedPaper[] = [];
      const invoice = issue(parts, before, { kind: 'part', share: '0.5' });
      const credits: IssuedPaper[] = [];
      const credit = (amount: string | null) => {
        const { own } = workOutCredit({ currency: 'EUR', invoice, credits, amount });
        const kind = 'credit-note';
        const id = `credit-${credits.length}`;
        const total = own.total.value.toString();
        const taxes = statedRows(own.rows);
        credits.push({
          ...invoice,
          id,
          number: id,
          kind,
          creditsId: invoice.id,
          scheduled: null,
          taxes,
          total,
        });
      };
      credit(`${1 + next(20)}.${10 + next(90)}`);
      credit(`${1 + next(20)}.${10 + next(90)}`);
      expect(() => credit(invoice.total)).toThrow('are left');
      credit(null);
      expect(() => credit('0.01')).toThrow('are left');
      expect(add(credits, ({ net }) => net)).toBe(add([invoice], ({ net }) => net));
      expect(add(credits, ({ taxAmount }) => taxAmount)).toBe(add([invoice], ({ taxAmount }) => taxAmount));
      issue(parts, [...before, ...credits], { kind: 'final' });
    }
  });
});

describe('an invoice', () => {
  it('is not worked out where it asks for nothing, too much, or a payment asked for already', () => {
    const parts = [agreed(['100', '50'], 'exclusive')];
    const before: IssuedPaper[] = [];
    const deposit = { kind: 'deposit', revisionId: 'one', partId: 'deposit' } as const;
    issue(parts, before, deposit);
    const fieldOf = (wanted: InvoiceWanted) => {
      try {
        workOutInvoice({ currency: 'EUR', parts, before, wanted });
        return 'worked';
      } catch (error) {
        return Reflect.get(Object(error), 'field');
      }
    };
    expect([
      fieldOf(deposit),
      fieldOf({ kind: 'deposit', revisionId: 'one', partId: 'none' }),
      fieldOf({ kind: 'part', amount: '0' }),
      fieldOf({ kind: 'part', share: '0.71' }),
      fieldOf({ kind: 'part', amount: '900' }),
      fieldOf({ kind: 'final' }),
    ]).toEqual(['partId', 'partId', 'amount', 'share', 'amount', 'worked']);
  });
});

describe('amounts with tax', () => {
  it('hold the tax of their rate', () => {
    // 119 with 19 % holds 19 (the rule amount x rate / (1 + rate) worked by hand).
    const rows = readTaxRows(
      [{ category: 'S', rate: '0.19', name: 'S', exemptionReason: '', net: '1000', taxAmount: '190' }],
      { key: 'a', text: 'a', currency: 'EUR' },
    );
    const [row] = rows;
    if (row === undefined) throw new Error('one row was given');
    const amount = { ...row.gross, value: decimal('119') };
    const [taken] = takeFrom(rows, row.gross, amount, { field: 'amount', label: 'part' });
    expect([taken?.net.value.toString(), taken?.taxAmount.value.toString()]).toEqual(['100', '19']);
  });
});
