import { performance } from 'node:perf_hooks';
import {
  type CuttingInstance,
  type CuttingPlan,
  createSeededGenerator,
  planCutting,
} from '@scantling/cutting';
import { loadSolver } from '@scantling/cutting-solver';
import { type KnownInstance, loadInstances } from '../cutting-instances/load-instances.ts';
import type { Benchmark, Measurement } from './benchmark.ts';

const MS_OF_ONE_EFFORT = 2000;

async function planned(
  instance: CuttingInstance,
  mostMs: number,
): Promise<{ plan: CuttingPlan; ms: number }> {
  const solver = await loadSolver();
  const begin = performance.now();
  const plan = planCutting(instance, {
    solver,
    random: createSeededGenerator(1),
    limits: { effort: mostMs / MS_OF_ONE_EFFORT, mostMs, clock: () => performance.now() },
  });
  return { plan, ms: performance.now() - begin };
}

type Run = KnownInstance & { readonly plan: CuttingPlan; readonly ms: number; readonly over: number };

/** Every instance once a time limit, whoever asks first. */
const runs = new Map<string, Promise<Run[]>>();

async function runAll(kind: CuttingInstance['kind'], mostMs: number): Promise<Run[]> {
  const done: Run[] = [];
  for (const known of loadInstances()) {
    if (known.instance.kind !== kind || known.instance.objective === 'max-value') continue;
    const { plan, ms } = await planned(known.instance, mostMs);
    done.push({ ...known, plan, ms, over: Number(plan.cost) / known.best.value });
  }
  return done;
}

function runsOf(kind: CuttingInstance['kind'], mostMs: number): Promise<Run[]> {
  const key = `${kind} ${mostMs}`;
  const known = runs.get(key) ?? runAll(kind, mostMs);
  runs.set(key, known);
  return known;
}

const mean = (numbers: readonly number[]) =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

function described({ name, plan, ms, over, best }: Run): string {
  const percent = ((over - 1) * 100).toFixed(2);
  return `${name}: ${plan.cost} (best known ${best.value}, ${percent} % over), bound ${plan.bound}, ${plan.endedBy}, ${ms.toFixed(0)} ms`;
}

/** A measure of all instances of a kind, in percent of the reference. */
function quality(
  name: string,
  kind: CuttingInstance['kind'],
  mostMs: number,
  reference: string,
  largestRatio: number,
  measure: (done: readonly Run[]) => number,
): Benchmark {
  return {
    name,
    reference,
    largestRatio,
    run: async (): Promise<Measurement> => {
      const done = await runsOf(kind, mostMs);
      return { oursMs: measure(done) * 100, referenceMs: 100, unit: '%', notes: done.map(described) };
    },
  };
}

/** A shop order of so many distinct parts, of the same mixture of sizes. */
function orderOf(parts: number): CuttingInstance {
  const random = createSeededGenerator(parts);
  return {
    kind: '2d-guillotine',
    kerf: 3,
    stock: [
      { id: 'ply-2500', length: 2500, width: 1250, cost: 79 },
      { id: 'ply-1525', length: 1525, width: 1525, cost: 54 },
    ],
    parts: Array.from({ length: parts }, (_, index) => ({
      id: `p${index}`,
      length: 200 + Math.floor(random() * 1000),
      width: 60 + Math.floor(random() * 400),
      quantity: 1 + Math.floor(random() * 3),
      rotatable: random() < 0.4,
    })),
  };
}

/** The time in which a plan within 12 % of its bound is first found: equal quality for orders of any size. */
async function msToQuality(parts: number): Promise<number> {
  const instance = orderOf(parts);
  for (let mostMs = 100; ; mostMs *= 1.5) {
    const { plan, ms } = await planned(instance, mostMs);
    if (Number(plan.gap) <= 0.12 || mostMs > 60_000) return ms;
  }
}

export const benchmarks: readonly Benchmark[] = [
  quality('sticks in 2 s, mean cost', '1d', 2000, 'best known', 1.005, (done) =>
    mean(done.map(({ over }) => over)),
  ),
  quality('sticks in 10 s, not proven', '1d', 10_000, 'all', 0.2, (done) =>
    mean(done.map(({ plan }) => (plan.status === 'optimal' ? 0 : 1))),
  ),
  quality('sheets in 5 s, mean cost', '2d-guillotine', 5000, 'best known', 1.02, (done) =>
    mean(done.map(({ over }) => over)),
  ),
  quality('sheets in 5 s, worst cost', '2d-guillotine', 5000, 'best known', 1.08, (done) =>
    Math.max(...done.map(({ over }) => over)),
  ),
  quality('sheets in 5 s, mean cost over own bound', '2d-guillotine', 5000, 'bound', 1.07, (done) =>
    mean(done.map(({ plan }) => 1 + Number(plan.gap))),
  ),
  {
    name: 'cutting growth from 20 to 80 distinct parts at equal quality',
    reference: '20 parts',
    largestRatio: 8,
    run: async () => ({ oursMs: await msToQuality(80), referenceMs: await msToQuality(20) }),
  },
];
