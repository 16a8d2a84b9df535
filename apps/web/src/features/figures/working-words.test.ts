import { divide, entered, input, roundMoney, sum, times, toTable } from '@scantling/figures';
import { expect, it } from 'vitest';
import { derivationWords, inputsOf, nodeOf, toldWords } from './working-words.ts';

const us = { locale: 'en-US' };
const source = entered();
const need = input({ key: 'need', label: 'Oak bought', unit: 'bd ft', value: '32.5', source });
const price = input({
  key: 'price',
  label: 'Oak 4/4',
  unit: 'money/bd ft',
  value: '7.8',
  currency: 'USD',
  source: { kind: 'price-list', text: 'list of 2026-03-01, line 41' },
});
const oak = times('Oak', price, need);

it('words a derivation with values and units', () => {
  const { ids, figures } = toTable(
    { oak, cost: roundMoney('Oak, to the cent', oak) },
    { withDerivations: true },
  );
  const node = nodeOf(figures, ids.oak);
  expect(derivationWords(figures, node, us)).toBe('$7.80 per bd ft × 32.5 bd ft');
  expect(inputsOf(figures, node).map((leaf) => leaf.source?.text)).toEqual([
    'list of 2026-03-01, line 41',
    'entered by hand',
  ]);
  expect(derivationWords(figures, nodeOf(figures, ids.cost), us)).toBe(
    '$253.50, rounded to 2 decimal places',
  );
  expect(derivationWords(figures, nodeOf(figures, 'need'), us)).toBeNull();
});

it('does not read out a sum of two hundred', () => {
  const lines = Array.from({ length: 200 }, (_, at) =>
    input({ key: `line/${at}`, label: `Line ${at}`, unit: 'money', value: at, currency: 'USD', source }),
  );
  const { ids, figures } = toTable({ all: sum('All lines', 'money', lines) }, { withDerivations: true });
  const node = nodeOf(figures, ids.all);
  expect(derivationWords(figures, node, us)).toBe('$0.00 + $1.00 + $2.00 + $3.00 + $4.00 + 195 more');
  expect(inputsOf(figures, node)).toHaveLength(200);
});

it('refuses a figure the table does not hold', () => {
  expect(() => nodeOf({}, 'cost')).toThrow('there is no such figure: "cost"');
});

it('tells a working over its levels, and nothing where the line of its inputs says it all', () => {
  const share = input({ key: 'yield', label: 'yield', unit: 'ratio', value: '0.72', source });
  const parts = input({ key: 'parts', label: '14 parts', unit: 'bd ft', value: '23.4', source });
  const bought = divide('Oak bought', parts, share);
  const { ids, figures } = toTable(
    { bought, cost: roundMoney('Oak, to the cent', times('Oak', price, bought)) },
    { withDerivations: true },
  );
  expect(toldWords(figures, nodeOf(figures, ids.cost), us)).toEqual([
    '14 parts 23.4 bd ft / yield 0.72 = 32.5 bd ft × Oak 4/4 $7.80 per bd ft = $253.50',
  ]);
  expect(toldWords(figures, nodeOf(figures, ids.bought), us)).toEqual([]);
});
