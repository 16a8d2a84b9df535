import { checkPlan } from '@scantling/cutting';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadInstances } from '../cutting-instances/load-instances.ts';
import { startTestApplication, type TestApplication } from './application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
});
afterAll(() => application.close());

const ask = (body: object) =>
  application.request.post('/api/calculations/cutting-plan').set(application.as('read-only')).send(body);

const legs = {
  kind: '1d',
  kerf: 3.2,
  stock: [{ id: 'ash', length: 2400, cost: 17.2 }],
  parts: [{ id: 'leg', length: 445, quantity: 16 }],
};

describe('a cutting plan', () => {
  it('is proven and checked, for numbers and for decimals as text', async () => {
    const { body } = await ask(legs).expect(200);
    // Five legs and four kerfs are 2237.8; a sixth does not fit, so 16 legs take four sticks.
    expect(body).toMatchObject({
      status: 'optimal',
      cost: '68.8',
      bound: '68.8',
      gap: '0',
      endedBy: 'proof',
    });
    expect(checkPlan({ ...legs, kind: '1d' }, body)).toEqual([]);
    const text = { ...legs, kerf: '3.2', stock: [{ id: 'ash', length: '2400', cost: '17.20' }] };
    const { body: same } = await ask(text).expect(200);
    expect(same.layouts).toEqual(body.layouts);
  });

  it('is made for instances as they are published', async () => {
    const names = ['bpp-falkenauer-t60_05', 'kp-of1', 'shop-wall-shelf-birch'];
    for (const { name, instance, best } of loadInstances().filter((one) => names.includes(one.name))) {
      const more = { schema: 1, name, units: 'mm', bestKnown: { value: best.value }, source: {} };
      const { body } = await ask({ ...instance, ...more, timeLimitMs: 1500 }).expect(200);
      expect(checkPlan(instance, body)).toEqual([]);
      expect(Number.isInteger(body.elapsedMs)).toBe(true);
    }
  });

  it('that cannot be made names the part and the nearest stock that would do', async () => {
    const parts = [{ id: 'post', length: 2500, quantity: 1 }];
    const { body } = await ask({ ...legs, parts }).expect(422);
    expect(body).toMatchObject({
      code: 'cutting-impossible',
      errors: [
        {
          field: 'parts.0',
          message: '"post" (2500) fits no stock there is',
          mend: 'Nearest is "ash"; stock of at least 2500, trims included, would do.',
        },
      ],
    });
    const stock = [{ id: 'ash', length: 2400, cost: 17.2, available: 3 }];
    const short = await ask({ ...legs, stock }).expect(422);
    expect(short.body).toMatchObject({ code: 'cutting-impossible', errors: [{ field: 'stock' }] });
  });

  it.each([
    ['kerf', { kerf: '1/8' }],
    ['stock.0.length', { stock: [{ id: 'ash', length: '0', cost: 1 }] }],
    ['parts.0.width', { parts: [{ id: 'leg', length: 445, width: 45, quantity: 1 }] }],
    ['kerff', { kerff: 3 }],
    ['timeLimitMs', { timeLimitMs: 10_000_000 }],
  ])('names the field that cannot be used: %s', async (field, change) => {
    const { body } = await ask({ ...legs, ...change }).expect(422);
    expect(body.errors.map((error: { field: string }) => error.field)).toEqual([field]);
  });

  it('is for people and programs that are known', async () => {
    await application.request.post('/api/calculations/cutting-plan').send(legs).expect(401);
  });

  it('is called off when the client goes, so that the next need not wait', async () => {
    const parts = Array.from({ length: 250 }, (_, index) => ({
      ...{ id: `p${index}`, quantity: 2, rotatable: true },
      ...{ length: 101 + ((index * 7919) % 499), width: 97 + ((index * 104_729) % 389) },
    }));
    const stock = [{ id: 'ply', length: 2500, width: 1250, cost: 80 }];
    const long = { kind: '2d-guillotine', kerf: 3, stock, parts, timeLimitMs: 120_000 };
    const gone = ask(long).timeout(1500);
    await expect(gone).rejects.toMatchObject({ timeout: 1500 });
    await ask(legs).timeout(25_000).expect(200);
  });
});
