import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const CHECKOUT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const LEFT_OUT = new Set(['node_modules', 'dist', 'generated', '.git', '.build', '.data']);

export type Import = Readonly<{
  specifier: string;
  /** Path of the file in the checkout that it leads to; undefined for packages from npm and of Node. */
  target: string | undefined;
  isTypeOnly: boolean;
}>;

export type SourceFile = Readonly<{
  path: string;
  text: string;
  imports: readonly Import[];
  isTest: boolean;
}>;

/** Paths below a folder, from the checkout's root, with forward slashes. */
export function filesBelow(folder: string, isWanted: (path: string) => boolean): string[] {
  const whole = join(CHECKOUT, folder);
  if (!existsSync(whole)) return [];
  return readdirSync(whole, { withFileTypes: true })
    .filter((entry) => !LEFT_OUT.has(entry.name))
    .flatMap((entry) => {
      const path = posix.join(folder, entry.name);
      if (entry.isDirectory()) return filesBelow(path, isWanted);
      return isWanted(path) ? [path] : [];
    });
}

/** Names of the folders right below one. */
export function foldersIn(folder: string): string[] {
  const whole = join(CHECKOUT, folder);
  if (!existsSync(whole)) return [];
  return readdirSync(whole, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !LEFT_OUT.has(entry.name))
    .map((entry) => entry.name);
}

export function textOf(path: string): string {
  return readFileSync(join(CHECKOUT, path), 'utf8');
}

export function isThere(path: string): boolean {
  return existsSync(join(CHECKOUT, path));
}

// Between the keyword and `from` stand names only, over several lines; a bare `import './x'` has no `from`.
const STATEMENT = /(?:^|\n)(import|export)\s+(type\s+)?(?:[\w*{][\w*{},\s]*?\sfrom\s+)?['"]([^'"\n]+)['"]/g;
const DYNAMIC = /\bimport\(\s*['"]([^'"\n]+)['"]\s*\)/g;

function targetOf(path: string, specifier: string): string | undefined {
  if (specifier.startsWith('.')) return posix.join(posix.dirname(path), specifier);
  const own = /^@scantling\/([\w-]+)$/.exec(specifier)?.[1];
  return own === undefined ? undefined : `packages/${own}/src/index.ts`;
}

function importsOf(path: string, text: string): Import[] {
  const statements = [...text.matchAll(STATEMENT)].map((match) => ({
    specifier: match[3] ?? '',
    isTypeOnly: match[2] !== undefined,
  }));
  const dynamic = [...text.matchAll(DYNAMIC)].map((match) => ({
    specifier: match[1] ?? '',
    isTypeOnly: false,
  }));
  return [...statements, ...dynamic].map((found) => ({ ...found, target: targetOf(path, found.specifier) }));
}

/** Reads every TypeScript file below a folder, generated ones left out. */
export function readSources(folder: string): SourceFile[] {
  return filesBelow(folder, (path) => /\.tsx?$/.test(path)).map((path) => {
    const text = textOf(path);
    return { path, text, imports: importsOf(path, text), isTest: /\.test\.tsx?$/.test(path) };
  });
}

/** The first loop of imports among the files, as a list of paths; empty where there is none. */
export function findLoop(files: readonly SourceFile[]): string[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): string[] => {
    const start = trail.indexOf(path);
    if (start >= 0) return [...trail.slice(start), path];
    const file = byPath.get(path);
    if (file === undefined || done.has(path)) return [];
    for (const { target } of file.imports) {
      const loop = target === undefined ? [] : visit(target, [...trail, path]);
      if (loop.length > 0) return loop;
    }
    done.add(path);
    return [];
  };
  for (const { path } of files) {
    const loop = visit(path, []);
    if (loop.length > 0) return loop;
  }
  return [];
}

/** Where a path lies relative to a folder, undefined where it lies outside. */
export function within(folder: string, path: string): string | undefined {
  const inside = relative(folder, path).replaceAll('\\', '/');
  return inside.startsWith('..') ? undefined : inside;
}
