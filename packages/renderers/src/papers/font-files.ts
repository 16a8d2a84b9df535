import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { charactersOfFont } from './characters-of-font.ts';

const require = createRequire(import.meta.url);

/**
 * The folders with the fonts of the papers, as npm installed them: static TTF under the SIL Open Font License. Vollkorn
 * is a sturdy text face, National Park the lettering of signs cut with a router; both have figures of equal width and
 * true fractions. The rest are there for signs and emoji. The template names the same (template/look.typ).
 */
export function fontFolders(): string[] {
  const cuts = [
    [require.resolve('@expo-google-fonts/vollkorn/package.json'), '400Regular', '600SemiBold'],
    [require.resolve('@expo-google-fonts/national-park/package.json'), '400Regular', '600SemiBold'],
    [require.resolve('@expo-google-fonts/noto-sans-symbols-2/package.json'), '400Regular'],
    [require.resolve('@expo-google-fonts/noto-sans-symbols/package.json'), '400Regular'],
    [require.resolve('@expo-google-fonts/noto-sans-math/package.json'), '400Regular'],
    [require.resolve('@expo-google-fonts/noto-emoji/package.json'), '400Regular'],
  ] as const;
  return cuts.flatMap(([manifest, ...folders]) => folders.map((folder) => join(dirname(manifest), folder)));
}

let known: ReadonlySet<number> | undefined;

/** Code points that at least one font of the papers can draw; read once. */
export function drawnCharacters(): ReadonlySet<number> {
  known ??= new Set(
    fontFolders().flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith('.ttf'))
        .flatMap((name) => charactersOfFont(readFileSync(join(folder, name)))),
    ),
  );
  return known;
}
