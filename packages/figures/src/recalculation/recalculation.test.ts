import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FigureNode, FigureTable } from '../table.ts';
import {
  Effort,
  FigureTableError,
  Recalculation,
  recalculate,
  TooMuchWorkError,
  UnknownFigureError,
} from './index.ts';
import { sampleTable } from './sample-table.ts';

const texts = (values: ReadonlyMap<string, unknown>) =>
  Object.fromEntries([...values].map(([id, value]) => [id, String(value)]));
const node = (id: string, more: Partial<FigureNode>): FigureNode => ({
  id,
  label: id,
  unit: 'ratio',
  currency: null,
  value: '1',
  ...more,
});
const derived = (id: string, operation: string, ...inputs: string[]): FigureNode =>
  node(id, { how: { operation: operation as 'sum', inputs } });
const leaf = (id: string, value = '1') => node(id, { value, source: { kind: 'entered', text: 'test' } });
const tableOf = (...nodes: FigureNode[]): FigureTable =>
  Object.fromEntries(nodes.map((one) => [one.id, one]));

describe('recalculation', () => {
  it('works out only what moves', () => {
    const { ids, figures } = sampleTable();
    const sheet = new Recalculation(figures);
    expect(sheet.faults).toEqual([]);
    // By hand: 3 packs x 9 + 3.5 / 0.7 x 12 = 87; 87 / 0.7 = 124.2857.
    expect(sheet.value(sheet.table.place(ids.price))?.toString()).toBe('124.29');
    // 104 screws take a third pack as 120 do: the screws and the packs before rounding move, and nothing after.
    const few = sheet.change({ screws: '104' });
    expect(few.changed.size).toBe(2);
    expect(few.changed.has(ids.cost)).toBe(false);
    const cheap = sheet.change({ 'board-price': '10', screws: '90' });
    expect(texts(cheap.changed)).toMatchObject({ [ids.cost]: '68', [ids.price]: '97.14', screws: '90' });
    expect(cheap.changed.has(ids.shelf)).toBe(false);
    expect(sheet.change({ screws: '120' }).changed.size).toBe(0);
  });

  it('names what has no answer, and answers the rest', () => {
    const { ids, figures } = sampleTable();
    const sheet = new Recalculation(figures);
    const { changed, faults, lost } = sheet.change({ 'screws-used': 0, margin: '1', 'board-price': '10' });
    expect(faults.map(({ label, reason }) => [label, reason])).toEqual(
      expect.arrayContaining([
        ['cost of a screw', 'cost of a screw: nothing can be divided by 0'],
        ['before rounding', 'before rounding: nothing can be divided by 0'],
      ]),
    );
    expect(lost.has(ids.price) && lost.has(ids.perScrew)).toBe(true);
    expect(changed.get(ids.cost)?.toString()).toBe('77');
    expect(changed.has(ids.price)).toBe(false);
    // It is as it was: a change leaves nothing behind.
    expect(sheet.change({ 'screws-used': 50 }).faults).toEqual([]);
  });

  it('comes to what the whole table worked out anew comes to', () => {
    const { figures } = sampleTable();
    const sheet = new Recalculation(figures);
    const keys = ['screws', 'pack-price', 'board-price', 'need', 'shelf-price'];
    const changes = fc.dictionary(
      fc.constantFrom(...keys),
      fc.integer({ min: 0, max: 500 }).map((n) => `${n / 10}`),
    );
    fc.assert(
      fc.property(changes, (set) => {
        const { changed } = sheet.change(set);
        for (const [id, value] of recalculate(figures, set)) {
          const now = changed.get(id) ?? sheet.value(sheet.table.place(id));
          expect(now?.toString()).toBe(value.toString());
        }
      }),
    );
  });

  it('finds faults of a table as it was given', () => {
    const table = tableOf(
      leaf('a', '0'),
      leaf('b'),
      derived('q', 'quotient', 'b', 'a'),
      derived('s', 'sum', 'b', 'b'),
    );
    const sheet = new Recalculation(table);
    expect(sheet.faults).toEqual([{ id: 'q', label: 'q', reason: 'q: nothing can be divided by 0' }]);
    expect(sheet.change({ a: '4' }).changed.get('q')?.toString()).toBe('0.25');
  });
});

describe('a table that cannot be worked out', () => {
  const refused =
    (...nodes: FigureNode[]) =>
    () =>
      new Recalculation(tableOf(...nodes));

  it('is refused with the figure named', () => {
    expect(refused(derived('a', 'sum', 'b'), derived('b', 'sum', 'a'))).toThrow(FigureTableError);
    expect(refused(derived('a', 'sum', 'a'))).toThrow('the figure "a" rests on itself');
    expect(refused(derived('a', 'sum', 'gone'))).toThrow(UnknownFigureError);
    expect(refused(leaf('b'), derived('a', 'guess', 'b'))).toThrow('"guess", which is no operation');
    expect(refused(leaf('b'), derived('a', 'toString', 'b'))).toThrow('which is no operation');
    expect(refused(leaf('b'), derived('a', 'quotient', 'b'))).toThrow('1 inputs, which it cannot take');
    expect(refused(leaf('b'), node('a', { how: { operation: 'round', inputs: ['b'] } }))).toThrow('places');
    expect(
      refused(
        leaf('b'),
        node('a', {
          how: { operation: 'allocate', inputs: ['b', 'b'], settings: { share: '1', currency: 'EUR' } },
        }),
      ),
    ).toThrow('names no weight of its own');
  });

  it('is taken however long a chain it is, and refused where it is too much work', () => {
    const chain = [
      leaf('0'),
      ...Array.from({ length: 20_000 }, (_, at) => derived(`${at + 1}`, 'sum', `${at}`, '0')),
    ];
    const table = tableOf(...chain);
    expect(new Recalculation(table).value(20_000)?.toString()).toBe('20001');
    expect(() => new Recalculation(table, new Effort(30_000))).toThrow(TooMuchWorkError);
  });

  it('calls what grows beyond all measure an answer that is not there', () => {
    const tower = Array.from({ length: 60 }, (_, at) => derived(`p${at + 1}`, 'power', `p${at}`, 'x'));
    const sheet = new Recalculation(tableOf(leaf('p0', '9'), leaf('x', '99'), ...tower));
    expect(sheet.faults.map(({ reason }) => reason)).toEqual([
      expect.stringContaining('too large or too small'),
    ]);
  });
});

describe('a change', () => {
  it('is of a leaf that is there', () => {
    const sheet = new Recalculation(tableOf(leaf('a'), node('bare', {}), derived('s', 'sum', 'a', 'bare')));
    for (const id of ['s', 'bare', 'gone', '__proto__'])
      expect(() => sheet.change({ [id]: 3 })).toThrow(UnknownFigureError);
  });
});
