import { decimal, ZERO } from '@scantling/decimals';
import { recalculate, toTable } from '@scantling/figures';
import { exclusiveTotals, inclusiveTotals } from '@scantling/money';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quoteTotals } from './quote-totals.ts';
import { sampleTotals as given, sampleLine as line, SAMPLE_TAXES as TAXES } from './sample-totals.ts';
import type { TotalsLine } from './totals-input.ts';

const lineArbitrary = fc.record({
  quantity: fc.integer({ min: 1, max: 40 }).map((tenths) => decimal(tenths).div(4).toString()),
  price: fc.integer({ min: 0, max: 10 ** 7 }).map((value) => decimal(value).div(1000).toString()),
  tax: fc.constantFrom('full', 'low', 'none'),
});
const linesArbitrary = fc
  .array(lineArbitrary, { minLength: 1, maxLength: 8 })
  .map((all) => all.map((one, at) => line(`line-${at}`, one.price, one)));
const discountArbitrary = fc.oneof(
  fc.constant(null),
  fc.integer({ min: 0, max: 1000 }).map((mille) => ({
    kind: 'share' as const,
    share: decimal(mille).div(1000).toString(),
  })),
);
const rateOf = (id: string) => TAXES.find((tax) => tax.id === id)?.rate ?? '0';
const categoryOf = (id: string) => TAXES.find((tax) => tax.id === id)?.category ?? 'S';

// Rules BR-CO-10 to 17 of EN 16931 through packages/money, which is checked against the published examples.
describe('quoteTotals', () => {
  it('come to what the order of EN 16931 gives, for prices without tax', () => {
    fc.assert(
      fc.property(linesArbitrary, discountArbitrary, (lines, discount) => {
        const totals = quoteTotals(given({ lines, discount }));
        const plain = exclusiveTotals({
          currency: 'EUR',
          lines: lines.map((one) => ({
            quantity: one.quantity,
            netPrice: one.price,
            category: categoryOf(one.tax),
            rate: rateOf(one.tax),
          })),
          allowances: totals.categories.map((one) => ({
            category: one.tax.category,
            rate: one.tax.rate,
            amount: one.discount.value,
          })),
        });
        expect(totals.sumOfLines.value.toString()).toBe(plain.sumOfLines.toString());
        expect(totals.net.value.toString()).toBe(plain.taxExclusive.toString());
        expect(totals.tax.value.toString()).toBe(plain.tax.toString());
        expect(totals.total.value.toString()).toBe(plain.taxInclusive.toString());
      }),
    );
  });

  it('keep the gross of prices with tax, and stay within a minor unit of the net rule', () => {
    fc.assert(
      fc.property(linesArbitrary, (lines) => {
        const totals = quoteTotals(given({ lines, priceMode: 'inclusive' }));
        const plain = inclusiveTotals({
          currency: 'EUR',
          lines: lines.map((one) => ({
            quantity: one.quantity,
            grossPrice: one.price,
            category: categoryOf(one.tax),
            rate: rateOf(one.tax),
          })),
        });
        expect(totals.total.value.eq(totals.sumOfLines.value)).toBe(true);
        expect(totals.total.value.toString()).toBe(plain.taxInclusive.toString());
        expect(totals.tax.value.toString()).toBe(plain.tax.toString());
        for (const one of totals.categories)
          expect(one.differenceFromNetRule?.value.abs().lte('0.01')).toBe(true);
      }),
    );
  });

  it('agree between the two modes within a minor unit a rate of tax', () => {
    fc.assert(
      fc.property(linesArbitrary, (lines) => {
        const inclusive = quoteTotals(given({ lines, priceMode: 'inclusive' }));
        const nets = inclusive.categories.map((one) =>
          line(one.tax.id, one.net.value.toString(), { tax: one.tax.id }),
        );
        const exclusive = quoteTotals(given({ lines: nets }));
        const difference = exclusive.total.value.minus(inclusive.total.value).abs();
        expect(difference.lte(decimal('0.01').times(nets.length))).toBe(true);
      }),
    );
  });

  it('are the same in any order of the lines', () => {
    const shuffled = linesArbitrary.chain((lines) =>
      fc.tuple(
        fc.constant(lines),
        fc.shuffledSubarray(lines, { minLength: lines.length, maxLength: lines.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, discountArbitrary, fc.boolean(), ([lines, other], discount, isInclusive) => {
        const priceMode = isInclusive ? 'inclusive' : 'exclusive';
        const schedule = [
          { id: 'a', label: 'deposit', share: '0.4' },
          { id: 'b', label: 'rest', share: '0.6' },
        ];
        const sums = (of: readonly TotalsLine[]) => {
          const totals = quoteTotals(given({ lines: of, discount, priceMode, schedule }));
          const parts = totals.schedule.map(({ amount }) => amount.value.toString());
          const figures = [totals.sumOfLines, totals.discount, totals.net, totals.tax, totals.total];
          return [...figures.map(({ value }) => value.toString()), ...parts];
        };
        expect(sums(other)).toEqual(sums(lines));
      }),
    );
  });

  it('share discount and schedule out whole, and can be recalculated from their leaves', () => {
    const shares = fc
      .array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 5 })
      .filter((all) => all.some((one) => one > 0));
    fc.assert(
      fc.property(linesArbitrary, discountArbitrary, shares, (lines, discount, weights) => {
        const whole = weights.reduce((sum, one) => sum + one, 0);
        const rest = (at: number) => weights.slice(0, at).reduce((sum, one) => sum + one, 0);
        // The last part takes what is left, so that shares like a third add up to 1 in decimals.
        const texts = weights.map((weight) => decimal(weight).div(whole).toDecimalPlaces(6, 1));
        const last = texts.slice(0, -1).reduce((left, one) => left.minus(one), decimal(1));
        const schedule = weights.map((_, at) => ({
          id: `part-${at}-${rest(at)}`,
          label: `part ${at}`,
          share: (at === weights.length - 1 ? last : (texts[at] ?? ZERO)).toString(),
        }));
        const totals = quoteTotals(given({ lines, discount, schedule }));
        const add = (values: readonly { value: ReturnType<typeof decimal> }[]) =>
          values.reduce((sum, { value }) => sum.plus(value), ZERO);
        expect(add(totals.schedule.map(({ amount }) => amount)).eq(totals.total.value)).toBe(true);
        expect(add(totals.categories.map((one) => one.discount)).eq(totals.discount.value)).toBe(true);
        const { ids, figures } = toTable({ total: totals.total }, { withDerivations: true });
        expect(recalculate(figures).get(ids.total)?.toString()).toBe(totals.total.value.toString());
      }),
    );
  });

  it('price a batch to the cent and take tax into a price that was worked out without', () => {
    const lines = [
      line('stools', '100', { quantity: '3', priceBase: '3' }),
      line('bench', '33.33', { isPriceWithoutTax: true }),
    ];
    const totals = quoteTotals(given({ lines, priceMode: 'inclusive' }));
    // 33.33 x 1.19 = 39.6627, worked by hand.
    expect(totals.lines.map(({ amount }) => amount.value.toString())).toEqual(['100', '39.66']);
    expect(totals.total.value.toString()).toBe('139.66');
  });

  it('count what is included, the options chosen and one of each group', () => {
    const wood = (isStandard: boolean) => ({ kind: 'alternate', group: 'wood', isStandard }) as const;
    const lines = [
      line('table', '1000'),
      line('cushion', '80', { choice: { kind: 'option' } }),
      line('oak', '200', { choice: wood(true) }),
      line('walnut', '350', { choice: wood(false) }),
    ];
    const total = (chosen: readonly string[]) => quoteTotals(given({ lines, chosen })).net.value.toString();
    expect([total([]), total(['cushion']), total(['walnut']), total(['oak'])]).toEqual([
      '1200',
      '1280',
      '1350',
      '1200',
    ]);
    const alternates = fc.record({
      prices: fc.array(fc.integer({ min: 1, max: 9999 }), { minLength: 2, maxLength: 6 }),
      standard: fc.nat(),
      wanted: fc.nat(),
    });
    fc.assert(
      fc.property(alternates, ({ prices, standard, wanted }) => {
        const group = prices.map((price, at) =>
          line(`a${at}`, String(price), {
            choice: { kind: 'alternate', group: 'g', isStandard: at === standard % prices.length },
          }),
        );
        const at = wanted % prices.length;
        const totals = quoteTotals(given({ lines: group, chosen: [`a${at}`] }));
        expect(totals.lines.filter(({ isCounted }) => isCounted)).toHaveLength(1);
        expect(totals.sumOfLines.value.eq(prices[at] ?? 0)).toBe(true);
      }),
    );
  });

  it('come to nothing without lines, in the currency asked for', () => {
    const totals = quoteTotals(given({ discount: { kind: 'amount', amount: '0' }, currency: 'JPY' }));
    expect([totals.total.value.toString(), totals.total.currency, totals.categories.length]).toEqual([
      '0',
      'JPY',
      0,
    ]);
  });
});
