import { CurrencyMismatchError } from '@scantling/money';
import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import * as f from './index.ts';

const money = (key: string, value: string, currency: 'USD' | 'EUR' = 'USD') =>
  f.input({ key, label: key, unit: 'money', value, currency, source: f.entered() });
const hours = (key: string, value: string) =>
  f.input({ key, label: key, unit: 'h', value, source: f.entered() });

describe('figures', () => {
  it('multiply a rate by what it is per, and keep the currency', () => {
    const rate = f.per('rate', money('pay', '90'), hours('worked', '4'));
    expectTypeOf(rate).toEqualTypeOf<f.Figure<'money/h'>>();
    const cost = f.times('cost', rate, hours('needed', '2.5'));
    expectTypeOf(cost).toEqualTypeOf<f.Figure<'money'>>();
    expect([cost.value.toString(), cost.unit, cost.currency]).toEqual(['56.25', 'money', 'USD']);
  });

  it('do not compile where units do not agree', () => {
    // @ts-expect-error hours cannot be taken from money
    f.difference('nonsense', money('a', '1'), hours('b', '1'));
    const boards = f.input({ key: 'bf', label: 'oak', unit: 'bd ft', value: 3, source: f.entered() });
    // @ts-expect-error board feet and hours have no sum
    f.sum('nonsense', 'bd ft', [boards, hours('b', '1')]);
  });

  it('refuse two currencies in one sum, by name', () => {
    expect(() => f.sum('total', 'money', [money('a', '1'), money('b', '1', 'EUR')])).toThrow(
      CurrencyMismatchError,
    );
  });

  it('refuse money without a currency and hours with one', () => {
    expect(() => f.input({ key: 'a', label: 'a', unit: 'money', value: 1, source: f.entered() })).toThrow(
      f.CurrencyNeededError,
    );
    expect(() =>
      f.input({ key: 'a', label: 'a', unit: 'h', value: 1, currency: 'USD', source: f.entered() }),
    ).toThrow(f.CurrencyNeededError);
  });

  it('say that nothing can be divided by 0', () => {
    expect(() => f.per('rate', money('a', '1'), hours('b', '0'))).toThrow(f.NoAnswerError);
  });
});

describe('the figure table', () => {
  it('holds a shared input once and gives back every value from the leaves', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 9 }),
        (ns, k) => {
          const factor = f.input({ key: 'k', label: 'k', unit: 'ratio', value: k, source: f.entered() });
          const lines = ns.map((n, i) => f.scale(`line ${i}`, money(`m${i}`, String(n)), factor));
          const total = f.roundMoney('total', f.divide('a third', f.sum('sum', 'money', lines), f.number(3)));
          const { ids, figures } = f.toTable({ total }, { withDerivations: true });
          expect(Object.values(figures).filter((node) => node.id === 'k')).toHaveLength(1);
          const again = f.recalculate(figures);
          for (const node of Object.values(figures)) expect(again.get(node.id)?.toString()).toBe(node.value);
          const changed = f.recalculate(figures, { k: 2 * k }).get(ids.total);
          const expected = lines
            .reduce((t, l) => t.plus(l.value.times(2)), f.number(0).value)
            .div(3)
            .toDecimalPlaces(2);
          expect(changed?.toString()).toBe(expected.toString());
        },
      ),
    );
  });

  it('leaves derivations out when they are not asked for', () => {
    const total = f.sum('total', 'money', [money('a', '1'), money('b', '2')]);
    const { figures } = f.toTable({ total }, { withDerivations: false });
    expect(Object.keys(figures)).toEqual(['total']);
    expect(figures.total?.how).toBeUndefined();
  });

  it('refuses two leaves of one name and changes to what is no leaf', () => {
    const clash = f.sum('total', 'money', [money('a', '1'), money('a', '2')]);
    expect(() => f.toTable({ clash }, { withDerivations: true })).toThrow(f.LeafClashError);
    const { figures } = f.toTable(
      { total: f.sum('t', 'money', [money('a', '1')]) },
      { withDerivations: true },
    );
    expect(() => f.recalculate(figures, { total: 3 })).toThrow(f.UnknownFigureError);
  });
});
