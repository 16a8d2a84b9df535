import { expect, it } from 'vitest';
import { causesBySize } from './causes-by-size.ts';

const cause = (name: 'price' | 'quantity' | 'rate' | 'rule') => ({
  cause: name,
  effect: { cost: `${name}.cost`, price: `${name}.price` },
  changes: [],
});

it('the cause that moves the most money stands first, dearer or cheaper, and none is lost', () => {
  const moves: Record<string, string> = {
    'price.cost': '9.5',
    'quantity.cost': '-120',
    'rate.cost': '0',
    'rule.cost': '30',
  };
  const causes = (['price', 'quantity', 'rate', 'rule'] as const).map(cause);
  const sorted = causesBySize(causes, (id) => moves[id] ?? '');
  expect(sorted.map(({ cause: name }) => name)).toEqual(['quantity', 'rule', 'price', 'rate']);
});

it('causes that move the same stay in their order', () => {
  const causes = (['price', 'quantity', 'rate'] as const).map(cause);
  const sorted = causesBySize(causes, (id) => (id === 'quantity.cost' ? '-4' : '4'));
  expect(sorted.map(({ cause: name }) => name)).toEqual(['price', 'quantity', 'rate']);
});
