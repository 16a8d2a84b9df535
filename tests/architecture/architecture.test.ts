import { ALL_CONTRACTS } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { ALLOWED_FEATURE_IMPORTS, ALLOWED_IMPORTS, PURE_PARTS } from './allowed-imports.ts';
import {
  findLoop,
  foldersIn,
  isThere,
  readSources,
  type SourceFile,
  textOf,
  within,
} from './source-files.ts';

const sources = ['packages', 'apps'].flatMap(readSources);
const shipped = sources.filter(({ isTest }) => !isTest);

/** "packages/figures" of "packages/figures/src/table.ts". */
function partOf(path: string): string {
  return path.split('/').slice(0, 2).join('/');
}

type Manifest = { dependencies?: Record<string, string>; devDependencies?: Record<string, string> };

function declaredIn(folder: string): Set<string> {
  const manifest: Manifest = JSON.parse(textOf(`${folder}/package.json`));
  return new Set(Object.keys({ ...manifest.dependencies, ...manifest.devDependencies }));
}

function packageOf(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** What only tests import, and settings of build tools, may use development packages. */
function isForDevelopment({ path }: SourceFile): boolean {
  const users = sources.filter(({ imports }) => imports.some(({ target }) => target === path));
  const isForTests = users.length > 0 && users.every(({ isTest }) => isTest);
  return isForTests || path.endsWith('.config.ts');
}

function across(file: SourceFile): string[] {
  const own = partOf(file.path);
  return file.imports.flatMap(({ target }) =>
    target === undefined || partOf(target) === own ? [] : [target],
  );
}

describe('imports', () => {
  it('were found at all', () => {
    expect(sources.length).toBeGreaterThan(100);
    expect(sources.flatMap(({ imports }) => imports).length).toBeGreaterThan(300);
  });

  it('know every part', () => {
    const parts = [...foldersIn('packages').map((name) => `packages/${name}`), 'apps/api', 'apps/web'];
    expect(Object.keys(ALLOWED_IMPORTS).sort()).toEqual(parts.sort());
  });

  it('go down only', () => {
    const wrong = shipped.flatMap((file) =>
      across(file)
        .filter((target) => ALLOWED_IMPORTS[partOf(file.path)]?.includes(partOf(target)) !== true)
        .map((target) => `${file.path} imports ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  it('reach other parts by their name, which the package declares', () => {
    const development = declaredIn('.');
    const wrong = shipped.flatMap((file) => {
      const { path, imports } = file;
      const declared = declaredIn(partOf(path));
      if (isForDevelopment(file)) for (const name of development) declared.add(name);
      return imports
        .filter(({ specifier, target }) =>
          specifier.startsWith('.')
            ? target !== undefined && partOf(target) !== partOf(path)
            : !specifier.startsWith('node:') && !declared.has(packageOf(specifier)),
        )
        .map(({ specifier }) => `${path} imports ${specifier}`);
    });
    expect(wrong).toEqual([]);
  });

  it('lead to files that exist', () => {
    const wrong = sources.flatMap(({ path, imports }) =>
      imports.flatMap(({ target }) =>
        target === undefined || isThere(target) ? [] : [`${path} imports ${target}`],
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('of Node stay out of the pure packages', () => {
    const wrong = shipped.filter(
      ({ path, imports }) =>
        PURE_PARTS.includes(partOf(path)) && imports.some(({ specifier }) => specifier.startsWith('node:')),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it('never go in a loop', () => {
    expect(findLoop(shipped)).toEqual([]);
  });

  it.each(Object.entries(ALLOWED_FEATURE_IMPORTS))(
    'of features in %s keep to the list',
    (folder, allowed) => {
      const featureOf = (path: string) => {
        const [name, ...rest] = within(folder, path)?.split('/') ?? [];
        return rest.length > 0 ? name : undefined;
      };
      const wrong = shipped.flatMap(({ path, imports }) => {
        const own = featureOf(path);
        if (own === undefined) return [];
        return imports.flatMap(({ target }) => {
          const other = target === undefined ? undefined : featureOf(target);
          const listed = [...(allowed[own] ?? []), ...(allowed['*'] ?? [])];
          if (other === undefined || other === own || listed.includes(other)) return [];
          return [`${path} imports ${target}`];
        });
      });
      expect(wrong).toEqual([]);
    },
  );
});

describe('every route', () => {
  it.each(ALL_CONTRACTS.map(({ tag, name }) => [`${tag}/${name}`] as const))(
    '%s has a contract file and a handler file of the same name',
    (path) => {
      expect(isThere(`packages/contracts/src/${path}.ts`), 'has a contract file').toBe(true);
      expect(textOf(`apps/api/src/features/${path}.ts`)).toMatch(/\bhandle\w*\(/);
      expect(textOf('apps/api/src/features/all-handlers.ts').includes(`'./${path}.ts'`), 'is listed').toBe(
        true,
      );
    },
  );

  it('that has a contract file is in the registry', () => {
    const known = new Set(ALL_CONTRACTS.map(({ tag, name }) => `packages/contracts/src/${tag}/${name}.ts`));
    const files = readSources('packages/contracts/src').filter(({ path, text }) => {
      const name = path.split('/').at(-1)?.replace(/\.ts$/, '');
      return text.includes(`  name: '${name}'`) && /\bdefine\w*\(/.test(text);
    });
    expect(files.length).toBeGreaterThan(0);
    expect(files.map(({ path }) => path).filter((path) => !known.has(path))).toEqual([]);
  });

  it('that has a handler is handled once', () => {
    const lines = textOf('apps/api/src/features/all-handlers.ts').match(/^ {2}\w+,$/gm) ?? [];
    expect(new Set(lines).size).toBe(lines.length);
    expect(lines.length).toBe(ALL_CONTRACTS.length);
  });
});
