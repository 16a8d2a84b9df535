import { describe, expect, it } from 'vitest';
import { freshHistory, recorded, undone } from '../../../components/edit-grid/undo-history.ts';
import { keepTrial, keptTrial, NOTHING_TRIED, withTried } from './tried-values.ts';

function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    length: 0,
    clear: () => kept.clear(),
    key: () => null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

describe('values tried', () => {
  it('stand once for each leaf, whatever day it is of', () => {
    const one = withTried(NOTHING_TRIED, 'exchange-rate/EUR/2026-01-02', '1.1');
    const two = withTried(one, 'exchange-rate/EUR/2026-02-02', '1.2');
    expect(two).toEqual({ 'exchange-rate/EUR/2026-01-02': '1.2' });
    expect(withTried(two, 'exchange-rate/EUR/2026-03-02', '1.2')).toBe(two);
    expect(withTried(two, 'exchange-rate/EUR/2026-03-02', null)).toEqual({});
    expect(withTried(two, 'oak', null)).toBe(two);
  });

  it('survive a reload with the way back, for their own sheet', () => {
    const window = storage();
    const first = recorded(freshHistory(NOTHING_TRIED), withTried(NOTHING_TRIED, 'oak', '3'));
    const history = recorded(first, withTried(first.present, 'glue', '1'));
    keepTrial(window, 'a', { isOn: true, history });
    const read = keptTrial(window, 'a');
    expect(read).toEqual({ isOn: true, history });
    expect(undone(read.history).present).toEqual({ oak: '3' });
    expect(keptTrial(window, 'b').isOn).toBe(false);
  });

  it('are forgotten once there are none and trying is over, and where they cannot be read', () => {
    const window = storage();
    keepTrial(window, 'a', { isOn: true, history: freshHistory({ oak: '3' }) });
    keepTrial(window, 'a', { isOn: false, history: freshHistory(NOTHING_TRIED) });
    expect(window.getItem('tried-values:a')).toBeNull();
    window.setItem('tried-values:a', '{"shape":"another"}');
    expect(keptTrial(window, 'a').history.present).toEqual({});
    window.setItem('tried-values:a', 'no json');
    expect(keptTrial(window, 'a').isOn).toBe(false);
  });
});
