import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshHistory, recorded, redone, undone } from './undo-history.ts';

const twice = recorded(recorded(freshHistory('a'), 'b'), 'c');

describe('undo', () => {
  it('goes back step by step and no further than the first state', () => {
    expect(undone(twice).present).toBe('b');
    expect(undone(undone(undone(twice))).present).toBe('a');
  });

  it('is taken back by redo, until something else is done', () => {
    expect(redone(undone(twice))).toEqual(twice);
    expect(redone(twice)).toBe(twice);
    const other = recorded(undone(twice), 'd');
    expect(redone(other).present).toBe('d');
    expect(undone(other).present).toBe('b');
  });

  it('takes no step where nothing changed', () => {
    expect(recorded(twice, 'c')).toBe(twice);
  });

  it('comes back to every state there was, in their order', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer(), { minLength: 1, maxLength: 150 }), ([first = 0, ...steps]) => {
        let history = steps.reduce(recorded, freshHistory(first));
        for (const state of [first, ...steps].toReversed()) {
          expect(history.present).toBe(state);
          history = undone(history);
        }
        for (const state of steps) {
          history = redone(history);
          expect(history.present).toBe(state);
        }
      }),
    );
  });

  it('keeps the last two hundred steps', () => {
    let history = freshHistory(0);
    for (let step = 1; step <= 500; step += 1) history = recorded(history, step);
    for (let step = 0; step < 500; step += 1) history = undone(history);
    expect(history.present).toBe(300);
  });
});
