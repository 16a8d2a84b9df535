import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

function isCheckout(folder: string): boolean {
  const manifest = join(folder, 'package.json');
  if (!existsSync(manifest)) return false;
  const parsed: unknown = JSON.parse(readFileSync(manifest, 'utf8'));
  return typeof parsed === 'object' && parsed !== null && 'name' in parsed && parsed.name === 'scantling';
}

/**
 * The folder that holds the whole project: prisma/, apps/, package.json.
 * Looked for upwards, because the source and the built bundle lie at different depths.
 * @throws Error where no folder above `from` is the project's
 */
export function findCheckoutFolder(from: string = import.meta.dirname): string {
  let folder = from;
  while (!isCheckout(folder)) {
    const above = dirname(folder);
    if (above === folder) throw new Error(`No Scantling checkout above ${from}`);
    folder = above;
  }
  return folder;
}
