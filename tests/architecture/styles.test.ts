import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow, readSources, textOf } from './source-files.ts';

const WEB = 'apps/web/src';
/** Brought by main.tsx before any screen. */
const ALWAYS_THERE = ['styles/tokens.css', 'styles/base.css', 'app/shell.css'].map(
  (path) => `${WEB}/${path}`,
);

const sources = new Map(readSources(WEB).map((file) => [file.path, file]));
const sheets = new Map(
  filesBelow(WEB, (path) => path.endsWith('.css')).map((path) => [path, classesOf(textOf(path))]),
);

/** Classes that a rule is about: those its selectors begin with. */
function classesOf(css: string): Set<string> {
  const heads = css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .matchAll(/(?:^|[{},;])\s*\.([a-z][a-z0-9-]*)(?=[^{};]*\{)/gm);
  return new Set([...heads].map((match) => match[1] ?? ''));
}

/** Class names that stand as text in the file's `className`. */
function classesIn(text: string): string[] {
  return [...text.matchAll(/className=(?:"([^"]*)"|\{([^}]*)\})/g)].flatMap((match) => {
    const given = match[1] === undefined ? (match[2]?.match(/['"`][^'"`]*['"`]?/g) ?? []) : [match[1]];
    return given.flatMap((part) => part.match(/[a-z][a-z0-9-]*/g) ?? []);
  });
}

/** The style sheets that are there whenever the file is, through all it imports. */
function sheetsWith(path: string, seen = new Set<string>()): string[] {
  if (seen.has(path)) return [];
  seen.add(path);
  if (path.endsWith('.css')) return [path];
  const file = sources.get(path);
  return (file?.imports ?? []).flatMap(({ specifier, isTypeOnly }) =>
    isTypeOnly || !specifier.startsWith('.')
      ? []
      : sheetsWith(posix.join(posix.dirname(path), specifier), seen),
  );
}

describe('every screen and component', () => {
  it('brings the style sheets of the classes it draws with, whatever was opened before', () => {
    const missing = [...sources.values()].flatMap(({ path, text, isTest }) => {
      if (isTest || !path.endsWith('.tsx')) return [];
      const there = new Set([...ALWAYS_THERE, ...sheetsWith(path)]);
      return classesIn(text).flatMap((name) => {
        const homes = [...sheets].filter(([, classes]) => classes.has(name)).map(([sheet]) => sheet);
        if (homes.length === 0 || homes.some((home) => there.has(home))) return [];
        return [`${path} uses "${name}" and does not import ${homes.join(' or ')}`];
      });
    });
    expect([...new Set(missing)]).toEqual([]);
  });

  it('is read for classes and their sheets', () => {
    expect(classesIn(`<p className="a b-c" /><p className={isOpen ? 'open' : \`d \${rest}\`}>`)).toEqual([
      'a',
      'b-c',
      'open',
      'd',
      'rest',
    ]);
    expect([...classesOf('.a .b, .c > d { x: y }\n@media print { .e:hover { x: y } }')]).toEqual([
      'a',
      'c',
      'e',
    ]);
    expect(sheets.size).toBeGreaterThan(20);
  });
});
