import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './checkout.mjs';

const passedOver = new Set(['node_modules', 'dist', 'dist.next', 'generated']);

function addTo(hash, path) {
  const full = join(checkout, path);
  if (!existsSync(full)) return;
  if (statSync(full).isDirectory()) {
    for (const name of readdirSync(full).sort()) {
      if (!passedOver.has(name) && !/\.test\.tsx?$/.test(name)) addTo(hash, join(path, name));
    }
    return;
  }
  hash.update(`${path}\0`).update(readFileSync(full)).update('\0');
}

/** One hash over the contents of files and folders of the checkout; tests and what is generated do not count. */
export function hashOf(paths) {
  const hash = createHash('sha256');
  for (const path of paths) addTo(hash, path);
  return hash.digest('hex');
}

function stampPath(name) {
  return join(checkout, '.build', `${name}.sha256`);
}

/** Whether the step was last done from sources of this hash. */
export function isStamped(name, hash) {
  const path = stampPath(name);
  return existsSync(path) && readFileSync(path, 'utf8') === hash;
}

export function stamp(name, hash) {
  mkdirSync(join(checkout, '.build'), { recursive: true });
  writeFileSync(stampPath(name), hash);
}
