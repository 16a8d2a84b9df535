import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadPublished } from './load.ts';

const PAGE = readFileSync(new URL('README.md', import.meta.url), 'utf8');
const ROOT = new URL('../../', import.meta.url);
const ids = loadPublished().map(({ id }) => id);

interface Row {
  readonly sum: string;
  readonly heldBy: string;
  readonly names: readonly string[];
}

function rowsOf(page: string): readonly Row[] {
  return [...page.matchAll(/^\| ([^|]+) \| ([^|]+) \|$/gm)]
    .map(([, sum = '', heldBy = '']) => ({
      sum: sum.trim(),
      heldBy: heldBy.trim(),
      names: [...heldBy.matchAll(/`([^`]+)`/g)].map(([, name = '']) => name),
    }))
    .filter(({ sum }) => sum !== 'sum' && !/^-+$/.test(sum));
}

/** The checks a name stands for; `*` at its end stands for any rest. */
function checksOf(name: string): readonly string[] {
  return name.endsWith('*')
    ? ids.filter((id) => id.startsWith(name.slice(0, -1)))
    : ids.filter((id) => id === name);
}

const rows = rowsOf(PAGE);

// No outside source: this holds the table of what is held by which outside source.
describe('the table of sums', () => {
  it('has a check, a test file or the word of the trade for every sum', () => {
    expect(rows.length).toBeGreaterThan(30);
    const bare = rows.filter(
      ({ names, heldBy }) => names.length === 0 && !heldBy.includes('common practice, no source'),
    );
    expect(bare.map(({ sum }) => sum)).toEqual([]);
  });

  it('names nothing that does not exist', () => {
    const gone = rows.flatMap(({ names }) =>
      names.filter((name) =>
        name.includes('/') ? !existsSync(new URL(name, ROOT)) : checksOf(name).length === 0,
      ),
    );
    expect(gone).toEqual([]);
  });

  it('leaves out no check, and there are at least ninety', () => {
    const named = new Set(rows.flatMap(({ names }) => names.flatMap(checksOf)));
    expect(ids.filter((id) => !named.has(id))).toEqual([]);
    expect(ids.length).toBeGreaterThanOrEqual(90);
  });

  it('finds what is missing, so that it cannot pass unread', () => {
    expect(rowsOf('| a sum | `no-such-check`, `tests/no.ts` |')).toEqual([
      { sum: 'a sum', heldBy: '`no-such-check`, `tests/no.ts`', names: ['no-such-check', 'tests/no.ts'] },
    ]);
    expect(checksOf('no-such-*')).toEqual([]);
    expect(checksOf('lumber-sheet-*').length).toBe(2);
  });
});
