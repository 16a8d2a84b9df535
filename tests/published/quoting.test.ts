import { describe, expect, it } from 'vitest';
import { differences, loadPublished } from './load.ts';
import { QUOTING_RUNNERS } from './quoting/index.ts';

const checks = loadPublished().filter((check) => check.function.startsWith('quoting/'));

describe('published examples of quoting', () => {
  it.each(checks)('$id: $title', (check) => {
    const run = QUOTING_RUNNERS[check.function];
    if (run === undefined) throw new Error(`${check.id}: nothing runs "${check.function}"`);
    expect(differences(check, run(check.inputs))).toEqual([]);
  });

  it('use every runner', () => {
    const used = new Set(checks.map((check) => check.function));
    expect(Object.keys(QUOTING_RUNNERS).filter((name) => !used.has(name))).toEqual([]);
  });
});
