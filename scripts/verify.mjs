// npm run verify: the one gate, the same on a laptop and in continuous integration.
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { prepareProduct } from './lib/prepare.mjs';
import { runNode } from './lib/run.mjs';

const bin = join(checkout, 'node_modules');
const vitest = [join(bin, 'vitest', 'vitest.mjs'), 'run'];
const steps = [
  ['format and lint', [join(bin, '@biomejs', 'biome', 'bin', 'biome'), 'check', '.']],
  ['types', [join('scripts', 'types.mjs')]],
  ['unused code', [join(bin, 'knip', 'bin', 'knip.js')]],
  ['unit, published and architecture tests', [...vitest, '--project', 'unit']],
  ['API and start tests', [...vitest, '--project', 'api', '--project', 'start']],
];

await prepareProduct();
const failed = [];
for (const [name, args] of steps) {
  console.log(`\n== ${name}`);
  if ((await runNode(args)) !== 0) failed.push(name);
}
console.log(failed.length === 0 ? '\nAll checks passed.' : `\nFailed: ${failed.join(', ')}`);
process.exitCode = failed.length === 0 ? 0 : 1;
