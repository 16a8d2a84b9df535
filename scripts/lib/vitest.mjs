import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './checkout.mjs';
import { runNode } from './run.mjs';

/**
 * Runs one project of vitest.config.ts.
 * @returns its JSON report, where it came so far as to write one, and the exit code
 */
export async function runVitest(project, args = []) {
  const folder = join(checkout, '.build');
  const outputFile = join(folder, `tests-${project}.json`);
  mkdirSync(folder, { recursive: true });
  rmSync(outputFile, { force: true });
  const exitCode = await runNode([
    join(checkout, 'node_modules', 'vitest', 'vitest.mjs'),
    'run',
    '--project',
    project,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${outputFile}`,
    ...args,
  ]);
  const report = existsSync(outputFile) ? JSON.parse(readFileSync(outputFile, 'utf8')) : undefined;
  return { report, exitCode };
}
