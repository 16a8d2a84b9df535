import { describe, expect, it } from 'vitest';
import {
  choose,
  derive,
  difference,
  divide,
  greatest,
  number,
  roundMoney,
  roundUp,
  scale,
  sum,
  times,
} from '../derive.ts';
import type { Figure } from '../figure.ts';
import { input } from '../input.ts';
import { entered } from '../source.ts';
import { type FigureNode, toTable } from '../table.ts';
import { runningDerivation } from './running-derivation.ts';

const source = entered();
/** Two places, as screens show most values; no currency signs, which are the screens' own. */
const read = ({ value, unit }: FigureNode) => {
  const shown = value.includes('.') ? Number(value).toFixed(2) : value;
  if (unit === 'ratio') return { text: value, isExact: true };
  return { text: `${shown} ${unit}`, isExact: Number(shown) === Number(value) };
};

function said(figure: Figure): readonly string[] {
  const { ids, figures } = toTable({ figure }, { withDerivations: true });
  return runningDerivation(figures, ids.figure, read);
}

const need = input({ key: 'need', label: '14 parts', unit: 'bd ft', value: '23.4', source });
const yieldShare = input({ key: 'yield', label: 'yield', unit: 'ratio', value: '0.72', source });
const price = input({
  key: 'price',
  label: 'Oak',
  unit: 'money/bd ft',
  value: '7.8',
  currency: 'USD',
  source,
});
const bought = divide('Oak bought', need, yieldShare);
const cost = times('Oak', price, bought);

// The sum is the design page's own example; the wording is ours (common practice, no source).
describe('a running derivation', () => {
  it('goes several levels in one breath, and a rounding that changes nothing shown is left out', () => {
    const text = '14 parts 23.40 bd ft / yield 0.72 = 32.50 bd ft × Oak 7.80 money/bd ft = 253.50 money';
    expect(said(cost)).toEqual([text]);
    expect(said(roundMoney('Oak, to the cent', cost))).toEqual([text]);
  });

  it('never says "=" of a number that is shown shorter than it is', () => {
    const third = divide('A third', need, number(7));
    expect(said(third)[0]).toBe('14 parts 23.40 bd ft / 7 ≈ 3.34 bd ft');
    expect(said(scale('Three of them', third, number(7)))[0]).toBe(
      '14 parts 23.40 bd ft / 7 ≈ 3.34 bd ft × 7 ≈ 23.40 bd ft',
    );
  });

  it('says what bounds it', () => {
    const least = input({ key: 'least', label: 'least order', unit: 'bd ft', value: '50', source });
    const pack = input({ key: 'pack', label: 'bundle', unit: 'bd ft', value: '20', source });
    expect(said(roundUp('Packs', greatest('At least', bought, least), pack))[0]).toBe(
      '14 parts 23.40 bd ft / yield 0.72 = 32.50 bd ft, but at least least order 50 bd ft = 50 bd ft, up to a multiple of bundle 20 bd ft = 60 bd ft',
    );
  });

  it('names the greatest terms of a long sum, and goes on with the greatest that has a working', () => {
    const terms = [1, 2, 3, 4].map((value) =>
      input({ key: `t${value}`, label: `T${value}`, unit: 'money', value, currency: 'USD', source }),
    );
    const all = sum('All', 'money', [...terms, cost]);
    expect(said(all)).toEqual([
      'Oak 253.50 money + T4 4 money + T3 3 money + 2 more = 263.50 money',
      'Oak: 14 parts 23.40 bd ft / yield 0.72 = 32.50 bd ft × Oak 7.80 money/bd ft = 253.50 money',
    ]);
  });

  it('does not turn round what cannot be turned round', () => {
    const rest = difference('Rest', need, bought);
    expect(said(rest)[0]).toBe('14 parts 23.40 bd ft − Oak bought 32.50 bd ft = -9.10 bd ft');
    expect(said(rest)[1]).toBe('Oak bought: 14 parts 23.40 bd ft / yield 0.72 = 32.50 bd ft');
  });

  it('stops after a few steps and takes the figure it stopped at up again, until enough was said', () => {
    let figure: Figure = need;
    for (let level = 0; level < 20; level += 1) figure = divide(`Level ${level}`, figure, yieldShare);
    const sentences = said(figure);
    expect(sentences).toHaveLength(2);
    expect(sentences[0]).toMatch(/^Level 15 .* \/ yield 0.72 ≈ /);
    expect(sentences[0]?.split('yield')).toHaveLength(5);
    expect(sentences[1]).toMatch(/^Level 15: Level 11 /);
  });

  it('says nothing of a leaf, of an id the table lacks, and where derivations were not sent', () => {
    expect(said(need)).toEqual([]);
    expect(runningDerivation({}, 'gone', read)).toEqual([]);
    const { ids, figures } = toTable({ cost }, { withDerivations: false });
    expect(runningDerivation(figures, ids.cost, read)).toEqual([]);
  });

  it('words what is no running calculation as the operation does', () => {
    const power = derive('Square', 'ratio', 'power', [yieldShare, number(2)]);
    expect(said(power)[0]).toMatch(/ = 0\.5184$/);
  });

  it('leaves out what changes nothing: factors of 1, bounds that do not bind, terms of nothing, choices', () => {
    const nothing = number(0, 'nothing');
    const once = scale('Once', sum('Both', 'ratio', [yieldShare, nothing]), number(1));
    const taken = choose('Taken', need, bought, number(9), greatest('At least', once, nothing));
    expect(said(divide('Doubled', taken, number('0.5')))).toEqual(['yield 0.72 / 0.5 = 1.44']);
  });

  it('ends where the next sentence would be a name and its value only', () => {
    const named = scale('Oak as it is', price, number(1));
    expect(said(sum('All', 'money/bd ft', [named, price, price, price]))).toEqual([
      `Oak as it is 7.80 money/bd ft${' + Oak 7.80 money/bd ft'.repeat(3)} = 31.20 money/bd ft`,
    ]);
  });

  it('names a subject once', () => {
    const of = (label: string, value: number) =>
      input({ key: label, label: `Table saw: ${label}`, unit: 'money', value, currency: 'USD', source });
    const wear = difference('Wear', of('price', 500), of('salvage', 100));
    expect(said(wear)).toEqual(['Table saw: price 500 money − salvage 100 money = 400 money']);
  });
});
