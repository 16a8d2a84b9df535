import { describe, expect, it } from 'vitest';
import type { Runner } from './costing/runner.ts';
import { differences, loadPublished } from './load.ts';
import { MONEY_RUNNERS } from './money/index.ts';

const runners: Readonly<Record<string, Runner>> = MONEY_RUNNERS;
const checks = loadPublished().filter((check) => check.function.startsWith('money/'));

describe('published examples of money', () => {
  it.each(checks)('$id: $title', (check) => {
    const run = runners[check.function];
    if (run === undefined) throw new Error(`${check.id}: nothing runs "${check.function}"`);
    expect(differences(check, run(check.inputs))).toEqual([]);
  });

  it('use every runner', () => {
    const used = new Set(checks.map((check) => check.function));
    expect(Object.keys(runners).filter((name) => !used.has(name))).toEqual([]);
  });
});
