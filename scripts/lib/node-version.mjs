// Runs before anything is installed, and on a Node that may be too old: plain, old syntax only.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './checkout.mjs';

function toNumbers(version) {
  return version.split('.').map(Number);
}

/** Whether a Node version such as '20.20.2' is at least the wanted one such as '20.19'. */
export function isAtLeast(version, wanted) {
  const has = toNumbers(version);
  const wants = toNumbers(wanted);
  for (let place = 0; place < wants.length; place += 1) {
    const difference = (has[place] || 0) - wants[place];
    if (difference !== 0) return difference > 0;
  }
  return true;
}

/** Ends the process with a sentence where this Node is older than package.json's `engines` asks for. */
export function requireNode(version = process.versions.node) {
  const manifest = JSON.parse(readFileSync(join(checkout, 'package.json'), 'utf8'));
  const wanted = manifest.engines.node.replace(/^>=/, '');
  if (isAtLeast(version, wanted)) return;
  console.error(`Scantling needs Node ${wanted} or newer; this is Node ${version}.`);
  console.error('Install a newer Node (see .nvmrc) and start again.');
  process.exit(1);
}
