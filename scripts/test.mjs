// npm test: all set-up, then every test; the last line reads 'N passed, N failed'.
// npm test -- unit api: only those projects of vitest.config.ts.
import { prepareProduct } from './lib/prepare.mjs';
import { addTotals } from './lib/test-totals.mjs';
import { runVitest } from './lib/vitest.mjs';

const everyProject = ['unit', 'api', 'start', 'browser'];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !everyProject.includes(name));
if (unknown.length > 0) {
  console.error(`No such tests: ${unknown.join(', ')}. There are: ${everyProject.join(', ')}.`);
  process.exit(2);
}

await prepareProduct();
const runs = [];
// One after the other: the browser's timing suffers where the rest runs beside it.
for (const project of asked.length > 0 ? asked : everyProject) runs.push(await runVitest(project));

const { passed, failed } = addTotals(runs);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
