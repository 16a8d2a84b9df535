import { type Decimal, decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { type IssuedPaper, offNetRule, type TaxRow, workOutInvoice } from './index.ts';
import { agreed, issue, numbers } from './sample-contract.ts';

// BR-CO-17 of EN 16931, written out a second time: taxable x rate, to two decimals, half away from zero.
const byRule = (net: Decimal, rate: string) => net.times(rate).toDecimalPlaces(2, 4);
const offBy = ({ net, rate, taxAmount }: TaxRow) =>
  decimal(taxAmount)
    .minus(byRule(decimal(net), rate))
    .toString();
const NOTHING = { kind: 'final' } as const;

/** Whether any net and its tax by the rule come to the amount with tax: not every amount has one. */
function isReachable(gross: Decimal, rate: string): boolean {
  const near = gross.div(decimal(rate).plus(1)).toDecimalPlaces(2);
  return ['-0.02', '-0.01', '0', '0.01', '0.02']
    .map((off) => near.plus(off))
    .some((net) => net.plus(byRule(net, rate)).eq(gross));
}

describe('the tax of an invoice', () => {
  it('is the rate of the net in every category where nothing was invoiced before and prices are without tax', () => {
    for (let seed = 1; seed <= 80; seed += 1) {
      const next = numbers(seed);
      const prices = Array.from({ length: 1 + next(6) }, () => `${next(9000)}.${10 + next(90)}`);
      const { taxes } = issue([agreed(prices, 'exclusive')], [], NOTHING);
      expect(taxes.map(offBy), `seed ${seed}`).toEqual(taxes.map(() => '0'));
      expect(offNetRule(taxes, 'EUR')).toEqual([]);
    }
  });

  it('taken out of an amount with tax is the rate of the net wherever any net fits, and else a cent off', () => {
    let missed = 0;
    for (let seed = 1; seed <= 80; seed += 1) {
      const next = numbers(seed);
      const parts = [agreed([`${next(9000) + 500}.${10 + next(90)}`, `${next(900) + 50}.37`], 'exclusive')];
      const { taxes } = issue(parts, [], { kind: 'part', amount: `${1 + next(400)}.${10 + next(90)}` });
      for (const row of taxes) {
        const fits = isReachable(decimal(row.net).plus(row.taxAmount), row.rate);
        expect(fits ? ['0'] : ['0.01', '-0.01'], `seed ${seed}: ${row.net} ${row.rate}`).toContain(
          offBy(row),
        );
        missed += fits ? 0 : 1;
      }
    }
    expect(missed).toBeGreaterThan(0);
  });

  it('left for the final invoice is off by no more than the roundings before it, and never by 1', () => {
    let off = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const next = numbers(seed);
      const mode = seed % 2 === 0 ? 'exclusive' : 'inclusive';
      const prices = Array.from({ length: 2 + next(5) }, () => `${next(9000) + 100}.${10 + next(90)}`);
      const parts = [agreed(prices, mode), agreed([`${next(500) + 1}.37`], mode, 'two')];
      const before: IssuedPaper[] = [];
      const count = 1 + next(6);
      for (let at = 0; at < count; at += 1)
        issue(parts, before, { kind: 'part', share: `0.0${1 + next(8)}7` });
      const { taxes } = issue(parts, before, NOTHING);
      for (const row of taxes) {
        // Half a minor unit for each paper and each accepted document; of a rate more where tax is taken out.
        const most = decimal('0.005')
          .times(decimal(row.rate).plus(1))
          .times(count + parts.length);
        const raw = decimal(row.taxAmount).minus(decimal(row.net).times(row.rate)).abs();
        expect(raw.lte(most), `seed ${seed}: ${row.taxAmount} on ${row.net}`).toBe(true);
        // BR-CO-17 and BR-S-09 in the Schematron of CEN/TC 434: less than 1 off.
        expect(decimal(offBy(row)).abs().lt(1)).toBe(true);
        off += offBy(row) === '0' ? 0 : 1;
      }
      expect(offNetRule(taxes, 'EUR').map(({ row, by }) => [row.name, by])).toEqual(
        taxes.filter((row) => offBy(row) !== '0').map((row) => [row.name, offBy(row)]),
      );
    }
    expect(off).toBeGreaterThan(0);
  });

  it('of a quote and its addition is that of each as accepted, and what that is off is told', () => {
    // 0.19 x 10.03 = 1.9057, twice 1.91 = 3.82; 0.19 x 20.06 = 3.8114, rounded 3.81 (by hand).
    const parts = [agreed(['10.03'], 'exclusive'), agreed(['10.03'], 'exclusive', 'two')];
    const { own } = workOutInvoice({ currency: 'EUR', parts, before: [], wanted: NOTHING });
    const rows = own.rows.map(({ tax, net, taxAmount }) => ({
      ...tax,
      net: net.value.toString(),
      taxAmount: taxAmount.value.toString(),
    }));
    expect(offNetRule(rows, 'EUR').map(({ row, by }) => [row.net, row.taxAmount, by])).toEqual([
      ['20.06', '3.82', '0.01'],
    ]);
  });
});
