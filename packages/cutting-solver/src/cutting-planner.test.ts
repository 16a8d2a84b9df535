import { checkPlan } from '@scantling/cutting';
import { afterAll, describe, expect, it } from 'vitest';
import { createCuttingPlanner } from './cutting-planner.ts';

const planner = createCuttingPlanner({ plansPerThread: 3 });
afterAll(() => planner.close());

const legs = {
  kind: '1d',
  kerf: '3.2',
  stock: [{ id: 'ash', length: '2400', cost: '17.2' }],
  parts: [{ id: 'leg', length: '445', quantity: 16 }],
} as const;

/** Triplets that fill their stick to the millimetre, as Falkenauer's do: much work for little input. */
const demanding = {
  kind: '1d',
  kerf: 0,
  stock: [{ id: 'bar', length: 100_000, cost: 1 }],
  parts: Array.from({ length: 300 }, (_, index) => ({
    id: `p${index}`,
    length: 20_011 + ((index * 7919) % 29_989),
    quantity: 1,
  })),
} as const;

describe('the planner in its thread', () => {
  it('plans, checked, again and again', async () => {
    for (let turn = 0; turn < 4; turn += 1) {
      const { plan, elapsedMs } = await planner.plan(legs, { timeLimitMs: 2000 });
      // Five legs and four kerfs are 2237.8; a sixth does not fit, so 16 legs take four sticks.
      expect(plan).toMatchObject({ status: 'optimal', cost: '68.8', bound: '68.8', gap: '0' });
      expect(checkPlan(legs, plan)).toEqual([]);
      expect(elapsedMs).toBeGreaterThanOrEqual(0);
    }
  });

  it('says what cannot be cut', async () => {
    const parts = [{ id: 'post', length: 2500, quantity: 1 }];
    await expect(planner.plan({ ...legs, parts }, { timeLimitMs: 2000 })).rejects.toMatchObject({
      code: 'cutting-impossible',
      field: 'parts.0',
      mend: 'Nearest is "ash"; stock of at least 2500, trims included, would do.',
    });
    await expect(planner.plan({ ...legs, kerf: '-1' }, { timeLimitMs: 2000 })).rejects.toMatchObject({
      code: 'cutting-input',
      field: 'kerf',
    });
  });

  it('stops when it is called off, and goes on with the next', async () => {
    const calling = new AbortController();
    const gone = planner.plan(demanding, {
      timeLimitMs: 100_000,
      signal: calling.signal,
      onProgress: () => calling.abort(),
    });
    const next = planner.plan(legs, { timeLimitMs: 2000 });
    await expect(gone).rejects.toMatchObject({ code: 'cutting-cancelled' });
    expect((await next).plan.status).toBe('optimal');
  });

  it('refuses more than may wait', async () => {
    const narrow = createCuttingPlanner({ mostWaiting: 1 });
    const first = narrow.plan(legs, { timeLimitMs: 2000 });
    await expect(narrow.plan(legs, { timeLimitMs: 2000 })).rejects.toMatchObject({ code: 'cutting-busy' });
    await first;
    await narrow.close();
  });

  it('fails a plan whose thread ends, and starts another', async () => {
    const under = planner.plan(demanding, { timeLimitMs: 100_000 });
    const failed = expect(under).rejects.toMatchObject({ code: 'cutting-failed' });
    await new Promise((resolve) => setImmediate(resolve));
    await planner.close();
    await failed;
    expect((await planner.plan(legs, { timeLimitMs: 2000 })).plan.cost).toBe('68.8');
  });
});
