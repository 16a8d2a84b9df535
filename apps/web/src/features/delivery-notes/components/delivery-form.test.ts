import { describe, expect, it } from 'vitest';
import { problemFrom } from '../../../lib/api-problem.ts';
import type { OrderedLine } from '../api/list-delivery-notes.ts';
import { allThatIsLeft, goingAlong, quantityErrors } from './delivery-form.ts';

const line = (lineId: string, outstanding: string): OrderedLine => ({
  revisionId: 'one',
  lineId,
  description: lineId,
  unit: 'piece',
  ordered: '3',
  delivered: '0',
  outstanding,
});
const LINES = [line('bench', '0'), line('shelf', '2'), line('hook', '3')];

describe('what goes along', () => {
  it('is all that is left to begin with, without lines that were handed over', () => {
    expect(goingAlong(LINES, allThatIsLeft(LINES))).toEqual([
      { revisionId: 'one', lineId: 'shelf', quantity: '2' },
      { revisionId: 'one', lineId: 'hook', quantity: '3' },
    ]);
  });

  it('leaves out a blank and a 0, takes a decimal comma, and sends what cannot be read to be named', () => {
    const typed = (shelf: string) =>
      goingAlong(LINES, { 'one shelf': shelf }).map(({ quantity }) => quantity);
    expect([typed(''), typed('0'), typed('0,0'), typed('1,5'), typed('two')]).toEqual([
      [],
      [],
      [],
      ['1.5'],
      ['two'],
    ]);
  });

  it('is told wrong at the line it is about, not at the place among those sent', () => {
    const errors = [{ field: 'lines.0.quantity', message: 'is 5', mend: 'Enter no more.' }];
    const problem = problemFrom(422, { title: 'Not usable', errors });
    const { of } = quantityErrors(problem, [{ revisionId: 'one', lineId: 'hook' }]);
    expect([of(LINES[1] ?? line('', '')), of(LINES[2] ?? line('', ''))?.message]).toEqual([
      undefined,
      'is 5',
    ]);
  });
});
