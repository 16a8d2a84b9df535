// npm run types: every part of the repository is checked with the types it may use.
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { runNode } from './lib/run.mjs';

const tsc = join(checkout, 'node_modules', 'typescript', 'bin', 'tsc');
const projects = [
  'packages',
  'packages/renderers',
  'packages/cutting-solver',
  'apps/api',
  'apps/web',
  'tests',
];

let failed = false;
for (const project of projects) {
  if ((await runNode([tsc, '-p', project])) !== 0) {
    console.error(`Types: ${project} has errors.`);
    failed = true;
  }
}
process.exit(failed ? 1 : 0);
