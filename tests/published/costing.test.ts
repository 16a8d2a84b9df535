import { describe, expect, it } from 'vitest';
import { COSTING_RUNNERS } from './costing/index.ts';
import { differences, loadPublished } from './load.ts';

const checks = loadPublished().filter((check) => check.function.startsWith('costing/'));

describe('published examples of costing', () => {
  it.each(checks)('$id: $title', (check) => {
    const run = COSTING_RUNNERS[check.function];
    if (run === undefined) throw new Error(`${check.id}: nothing runs "${check.function}"`);
    expect(differences(check, run(check.inputs))).toEqual([]);
  });

  it('use every runner', () => {
    const used = new Set(checks.map((check) => check.function));
    expect(Object.keys(COSTING_RUNNERS).filter((name) => !used.has(name))).toEqual([]);
  });
});
