// npm run bench: measures against a stated reference and prints ratios; --json for programs, names to choose some.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { prepareSources } from './lib/prepare.mjs';

const isJson = process.argv.includes('--json');
const asked = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));

if (isJson) console.log = console.error;
await prepareSources();
const { tsImport } = await import('tsx/esm/api');

const folder = join(checkout, 'tests', 'bench');
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => asked.length === 0 || asked.some((word) => name.includes(word)))
  .sort();
if (files.length === 0) {
  console.error(`No benchmark in tests/bench matches ${asked.join(' ') || '*.bench.ts'}.`);
  process.exit(2);
}

const results = [];
for (const file of files) {
  const { benchmarks } = await tsImport(join(folder, file), import.meta.url);
  for (const benchmark of benchmarks) {
    const { oursMs, referenceMs, unit = 'ms', notes = [] } = await benchmark.run();
    for (const note of notes) console.log(`  ${note}`);
    const ratio = oursMs / referenceMs;
    const isMet = benchmark.largestRatio === undefined || ratio <= benchmark.largestRatio;
    const { name, reference } = benchmark;
    results.push({ name, reference, oursMs, referenceMs, unit, ratio, isMet });
    const target = benchmark.largestRatio === undefined ? '' : `, at most ${benchmark.largestRatio} wanted`;
    console.log(
      `${name}: ${oursMs.toFixed(1)} ${unit}, ${reference} ${referenceMs.toFixed(1)} ${unit}, ratio ${ratio.toFixed(3)}${target}`,
    );
  }
}
if (isJson) process.stdout.write(`${JSON.stringify(results, null, 2)}\n`);
process.exitCode = results.every(({ isMet }) => isMet) ? 0 : 1;
