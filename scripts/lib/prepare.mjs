import { install } from './install.mjs';
import { requireNode } from './node-version.mjs';
import { runNode } from './run.mjs';

async function runStep(script) {
  const code = await runNode([script]);
  if (code !== 0) process.exit(code);
}

/** What a fresh clone needs before TypeScript can run: the packages and the generated database client. */
export async function prepareSources() {
  requireNode();
  await install();
  await runStep('scripts/generate.mjs');
}

/** What a fresh clone needs before the product can start; does nothing where nothing changed. */
export async function prepareProduct() {
  await prepareSources();
  await runStep('scripts/build.mjs');
}
