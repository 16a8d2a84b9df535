import { describe, expect, it } from 'vitest';
import { filesBelow, isThere, textOf } from './source-files.ts';

const MOST_LINES = 250;
/** Lists with a line or two a route: there is nothing to read through in them. */
const ROUTE_LISTS = ['packages/contracts/src/registry.ts', 'apps/api/src/features/all-handlers.ts'];
const VAGUE_NAMES = /(?:^|[/.-])(?:utils?|helpers?|common|misc|managers?)(?:[/.-]|$)/;

/** Files that an index imports values from, to list them under a name in capitals. */
function entriesOf(index: string): string[] {
  const text = textOf(index);
  if (!/^export const [A-Z][A-Z_]+\b[\s\S]*?= \{/m.test(text)) return [];
  return [...text.matchAll(/^import (\{[^}]*\}) from '\.\/([\w-]+)\.ts';/gm)]
    .filter((match) => /[{,]\s*(?!type\s)\w/.test(match[1] ?? ''))
    .map((match) => index.replace(/index\.ts$/, `${match[2]}.ts`));
}

const REGISTRIES = filesBelow('packages', (path) => path.endsWith('/index.ts'))
  .map((index) => ({ index, entries: entriesOf(index) }))
  .filter(({ entries }) => entries.length > 0);

describe('every entry of a registry', () => {
  it.each([
    'packages/units/src/pricing-units/index.ts',
    'packages/figures/src/operations/index.ts',
    'packages/costing/src/depreciation/methods/index.ts',
  ])('is found in %s', (index) => {
    expect(REGISTRIES.find((registry) => registry.index === index)?.entries.length).toBeGreaterThan(4);
  });

  it.each(REGISTRIES.map(({ index, entries }) => [index, entries] as const))(
    'in %s has a test beside it',
    (_, entries) => {
      expect(entries.filter((entry) => !isThere(entry.replace(/\.ts$/, '.test.ts')))).toEqual([]);
    },
  );
});

describe('every file', () => {
  const own = ['packages', 'apps', 'tests', 'scripts', 'prisma'].flatMap((folder) =>
    filesBelow(folder, (path) => /\.(?:tsx?|mjs|css)$/.test(path)),
  );

  it(`keeps to ${MOST_LINES} lines`, () => {
    const read = own.filter((path) => !ROUTE_LISTS.includes(path));
    const long = read.filter((path) => textOf(path).split('\n').length - 1 > MOST_LINES);
    expect(long).toEqual([]);
  });

  it('has a name in kebab-case that says something', () => {
    const odd = own.filter((path) => !/^[a-z0-9./_-]+$/.test(path) || VAGUE_NAMES.test(path));
    expect(odd).toEqual([]);
  });

  it('gets along without escapes from the checks', () => {
    // Type tests expect an error on purpose; the compiler complains where there is none.
    const escapes = /@ts-(?:ignore|nocheck)|biome-ignore|eslint-disable|as unknown as|\.skip\(|\bTODO\b/;
    const expectsError = /@ts-expect-error/;
    const code = own.filter((path) => !path.startsWith('tests/architecture/'));
    const escaping = code.filter((path) => {
      const text = textOf(path);
      return escapes.test(text) || (!path.endsWith('.test.ts') && expectsError.test(text));
    });
    expect(escaping).toEqual([]);
  });
});
