import { describe, expect, it } from 'vitest';
import type { Runner } from './costing/runner.ts';
import { differences, loadPublished } from './load.ts';
import { UNITS_RUNNERS } from './units/index.ts';

const runners: Readonly<Record<string, Runner>> = UNITS_RUNNERS;
const checks = loadPublished().filter((check) => check.function.startsWith('units/'));

describe('published examples of units', () => {
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
