import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { attributeDifference, type DifferenceStep } from './attribute-difference.ts';
import { divide, scale, sum } from './derive.ts';
import type { Figure } from './figure.ts';
import { input } from './input.ts';
import { entered } from './source.ts';
import { toTable } from './table.ts';

const leaf = (key: string, value: string): Figure<'ratio'> =>
  input({ key, label: key, unit: 'ratio', value, source: entered() });
const tableOf = (total: Figure) => ({
  figures: toTable({ total }, { withDerivations: true }).figures,
  totals: ['total'],
});
const leaves = (...ids: string[]): DifferenceStep[] => ids.map((id) => ({ kind: 'leaf', was: id, now: id }));
const effectsOf = (...asked: Parameters<typeof attributeDifference>) => {
  const { effects, rest } = attributeDifference(...asked);
  return [...effects, rest].map(([amount]) => amount?.toString());
};

describe('attributeDifference', () => {
  it('shares what two factors do together by halves (Shapley 1953, from memory; two factors by hand)', () => {
    const area = (a: string, b: string) => tableOf(scale('area', leaf('a', a), leaf('b', b)));
    // 2 x 3 = 6 becomes 5 x 7 = 35: a moves 3 x (3 + 7) / 2 = 15, b moves 4 x (2 + 5) / 2 = 14.
    expect(effectsOf(area('2', '3'), area('5', '7'), leaves('a', 'b'))).toEqual(['15', '14', '0']);
  });

  it('leaves to the rest what is worked out in another way', () => {
    const was = tableOf(scale('total', leaf('a', '2'), leaf('b', '3')));
    const now = tableOf(sum('total', 'ratio', [leaf('a', '4'), leaf('b', '3')]));
    // There: 2 x 3 to 4 x 3, then 12 to 7. Back: 4 + 3 to 2 + 3, then 5 to 6. Means: (6 + 2) / 2 and (-5 - 1) / 2.
    expect(effectsOf(was, now, leaves('a'))).toEqual(['4', '-3']);
  });

  it('goes on past a state without an answer, and still adds up', () => {
    const total = (a: string, b: string) => tableOf(divide('total', leaf('a', a), leaf('b', b)));
    const found = attributeDifference(total('0', '2'), total('6', '3'), leaves('a', 'b'));
    const sumOf = [...found.effects, found.rest].reduce((all, [one]) => all.plus(one ?? 0), decimal(0));
    expect(sumOf.toString()).toBe('2');
    const zero = (a: string, b: string) =>
      tableOf(divide('total', leaf('a', a), sum('divisor', 'ratio', [leaf('b', b), leaf('c', '-1')])));
    // b = 1 on the way back has no answer; what it would have told falls to the other steps.
    const stuck = attributeDifference(zero('6', '3'), zero('8', '5'), [
      ...leaves('a'),
      { kind: 'leaf', was: 'b', now: 'c' },
      ...leaves('b'),
    ]);
    const all = [...stuck.effects, stuck.rest].reduce((sofar, [one]) => sofar.plus(one ?? 0), decimal(0));
    expect(all.toString()).toBe('-1');
  });
});
