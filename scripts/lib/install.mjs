import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './checkout.mjs';
import { run } from './run.mjs';

function readPackages(path) {
  const full = join(checkout, path);
  return existsSync(full) ? JSON.parse(readFileSync(full, 'utf8')).packages : undefined;
}

/**
 * Whether node_modules is what package-lock.json asks for. npm writes node_modules/.package-lock.json when an
 * installation is complete; optional packages of other machines are not in it.
 */
export function isInstalled(
  wanted = readPackages('package-lock.json'),
  installed = readPackages(join('node_modules', '.package-lock.json')),
) {
  if (wanted === undefined || installed === undefined) return false;
  return Object.entries(wanted)
    .filter(([path, entry]) => path.includes('node_modules/') && !entry.optional)
    .every(([path, entry]) => {
      const has = installed[path];
      return has !== undefined && has.version === entry.version && has.integrity === entry.integrity;
    });
}

/** Installs what package-lock.json names, where that is not there already. */
export async function install() {
  if (isInstalled()) return;
  console.log('Installing the packages that package-lock.json names ...');
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const code = npm?.endsWith('.js')
    ? await run(process.execPath, [npm, ...args])
    : await run('npm', args, { shell: process.platform === 'win32' });
  if (code === 0) return;
  console.error('npm ci failed: see above. The packages come from the registry that npm is set up for.');
  process.exit(code);
}
