import { describe, expect, it } from 'vitest';
import { foldersIn, isThere, textOf } from './source-files.ts';

const DOCUMENTS = ['README.md', 'DEVELOPERS.md'];

/** Folders whose subfolders are named after terms of the trade. */
const TERM_FOLDERS = [
  'packages/costing/src',
  'packages/quoting/src',
  'packages/contracts/src',
  'apps/api/src/features',
  'apps/web/src/features',
];

/** What a fresh clone does not hold because the program makes it. */
const MADE_LATER = /(?:^|\/)(?:dist|node_modules|generated|\.data|\.build)(?:\/|$)/;

function asFolder(term: string): string {
  return term
    .trim()
    .replaceAll('`', '')
    .toLowerCase()
    .replace(/[\s/]+/g, '-');
}

/** The terms of the table under "## Glossary": first column, several in one cell parted by commas. */
function glossaryTerms(readme: string): Set<string> {
  const section = readme.split(/^## Glossary$/m)[1]?.split(/^## /m)[0] ?? '';
  const rows = section
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .slice(2);
  return new Set(rows.flatMap((row) => (row.split('|')[1] ?? '').split(',').map(asFolder)));
}

/** A folder may hold many of what the glossary explains once. */
function singulars(folder: string): string[] {
  return [folder, folder.replace(/s$/, ''), folder.replace(/ies$/, 'y'), folder.replace(/es$/, '')];
}

/** Paths in backticks: with a slash and neither placeholder nor address. */
function pathsNamed(text: string): string[] {
  return [...text.matchAll(/`([^`\n]+)`/g)]
    .map((match) => match[1] ?? '')
    .filter((word) =>
      /^\.?[\w.-]+(?:\/[\w.-]+)+\/?$|^[\w.-]+\/$|^[\w-]+\.(?:md|json|yml|ts|mjs|prisma)$/.test(word),
    )
    .filter((word) => !MADE_LATER.test(word));
}

/** npm scripts named: `npm run x`, `npm start`, `npm test`. */
function scriptsNamed(text: string): string[] {
  const run = [...text.matchAll(/\bnpm run ([\w:-]+)/g)].map((match) => match[1] ?? '');
  const short = [...text.matchAll(/\bnpm (start|test)\b/g)].map((match) => match[1] ?? '');
  return [...new Set([...run, ...short])];
}

describe('reading the documents', () => {
  it('finds what they name', () => {
    const text = 'Run `npm run bench`, see `docs/scale.md`, `apps/web/dist` and `POST /api/x`; npm start.';
    expect(scriptsNamed(text)).toEqual(['bench', 'start']);
    expect(pathsNamed(text)).toEqual(['docs/scale.md']);
    const readme =
      '## Glossary\n\n| word | means |\n| --- | --- |\n| price list, price | dated |\n\n## Next\n| x | y |';
    expect([...glossaryTerms(readme)]).toEqual(['price-list', 'price']);
  });
});

describe.each(DOCUMENTS)('%s', (document) => {
  it('exists', () => {
    expect(isThere(document)).toBe(true);
  });

  it('names paths that exist', () => {
    expect(pathsNamed(textOf(document)).filter((path) => !isThere(path))).toEqual([]);
  });

  it('names scripts that exist', () => {
    const { scripts }: { scripts: Record<string, string> } = JSON.parse(textOf('package.json'));
    expect(scriptsNamed(textOf(document)).filter((name) => scripts[name] === undefined)).toEqual([]);
  });
});

describe('every folder named after a term of the trade', () => {
  it.each(TERM_FOLDERS)('in %s has a line in the glossary', (folder) => {
    const terms = glossaryTerms(textOf('README.md'));
    expect(terms.size).toBeGreaterThan(0);
    const unexplained = foldersIn(folder).filter((name) => !singulars(name).some((term) => terms.has(term)));
    expect(unexplained).toEqual([]);
  });
});
