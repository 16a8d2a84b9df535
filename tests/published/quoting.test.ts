import { describe, expect, it } from 'vitest';
import type { Runner } from './costing/runner.ts';
import { differences, loadPublished } from './load.ts';
import { scaleLawRunner } from './quoting/early-price.ts';

const RUNNERS: Readonly<Record<string, Runner>> = { 'quoting/scale-law': scaleLawRunner };
const checks = loadPublished().filter((check) => check.function.startsWith('quoting/'));

describe('published examples of quoting', () => {
  it.each(checks)('$id: $title', (check) => {
    const run = RUNNERS[check.function];
    if (run === undefined) throw new Error(`${check.id}: nothing runs "${check.function}"`);
    expect(differences(check, run(check.inputs))).toEqual([]);
  });

  it('use every runner', () => {
    const used = new Set(checks.map((check) => check.function));
    expect(Object.keys(RUNNERS).filter((name) => !used.has(name))).toEqual([]);
  });
});
