import { checkPlan, createSeededGenerator, planCutting } from '@scantling/cutting';
import { loadSolver } from '@scantling/cutting-solver';
import { describe, expect, it } from 'vitest';
import { loadInstances } from '../cutting-instances/load-instances.ts';

// Optima as published, by Delorme, Iori, Martello 2018 (Optimization Letters 12(2), solution table) for one stick
// length and by Cintra, Miyazawa, Wakabayashi, Xavier 2008 (EJOR 191) for the sheet; the two with several stick
// lengths were proven by a solver run of this project. Each instance names its own source.
const QUICK = [
  'bpp-falkenauer-t60_05',
  'bpp-falkenauer-u250_03',
  'bpp-falkenauer-u500_07',
  'bpp-scholl1-n2c1w2_c',
  'bpp-scholl2-n2w1b1r3',
  'bpp-schwerin1-10',
  'csp-waescher-gau-test0044',
  'csp-waescher-gau-test0075',
  'kp-gcut7r',
  'vsbpp-monaci-100-5',
  'vsbpp-hs-convex-200-3-1',
];

const solver = await loadSolver();
const instances = loadInstances();

describe('published cutting instances', () => {
  it.each(QUICK)('%s comes out at its published optimum, proven', (name) => {
    const known = instances.find((one) => one.name === name);
    if (known === undefined) throw new Error(`there is no instance ${name}`);
    expect(known.best.isProven).toBe(true);
    const plan = planCutting(known.instance, {
      solver,
      random: createSeededGenerator(1),
      // Bounded by work, not by a clock that runs otherwise on every machine.
      limits: { effort: 1, mostMs: 600_000, clock: () => 0 },
    });
    expect(Number(plan.value ?? plan.cost)).toBe(known.best.value);
    expect(plan.status).toBe('optimal');
    expect(checkPlan(known.instance, plan)).toEqual([]);
  });

  it('all name their source and licence', () => {
    for (const { source, best } of instances) {
      expect(source.set).not.toBe('');
      expect(source.licence).not.toBe('');
      expect(best.by).not.toBe('');
    }
    expect(instances.length).toBeGreaterThan(30);
  });
});
