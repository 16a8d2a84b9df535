import { costTermsSchema } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { readConfig } from '../../config.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';
import { countDemo } from './demo-content.ts';
import { loadDemo } from './load-demo.ts';
import { loadDemoAtFirstStart } from './load-demo-at-first-start.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

const NOTHING = {
  designs: 0,
  costSheets: 0,
  materials: 0,
  suppliers: 0,
  priceLists: 0,
  prices: 0,
  exchangeRates: 0,
  tools: 0,
  people: 0,
  clients: 0,
  enquiries: 0,
  overheadAmounts: 0,
};
const clock = () => new Date('2026-11-25T10:00:00Z');
const load = () => test.request.post('/api/demo').set(test.as('owner'));
const remove = () => test.request.delete('/api/demo').set(test.as('owner'));

/** Every row of every table but those that only requests and migrations write. */
async function allRows(): Promise<Record<string, number>> {
  const tables = await test.database.$queryRaw<{ name: string }[]>`
    select table_name as name from information_schema.tables where table_schema = 'public'
    and table_name not in ('_prisma_migrations', 'ApiToken', 'IdempotentAnswer', 'SetUpLink') order by 1`;
  const counts: Record<string, number> = {};
  for (const { name } of tables) {
    const [row] = await test.database.$queryRawUnsafe<{ n: number }[]>(
      `select count(*)::int as n from "${name}"`,
    );
    counts[name] = row?.n ?? 0;
  }
  return counts;
}

describe('removing the demo', () => {
  it('is for owners and does nothing where there is none', async () => {
    await test.request.delete('/api/demo').set(test.as('maker')).expect(403);
    const { body } = await remove().expect(200);
    expect(body.removed).toEqual(NOTHING);
  });

  it('is one step and leaves nothing behind', async () => {
    await load().expect(200);
    const { body } = await remove().expect(200);
    expect(body.removed).toMatchObject({ designs: 12, tools: 25, clients: 10 });
    expect(Object.values(body.kept)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(body.inventedName).toBeNull();
    expect(body.setUpPath).toMatch(/^\/set-up#/);
    expect(Object.values(await allRows()).every((count) => count === 0)).toBe(true);
  });

  it('does not come back at the next start', async () => {
    expect(await loadDemoAtFirstStart.run({ config: readConfig({}), database: test.database })).toEqual([]);
    expect(await countDemo(test.database)).toEqual(NOTHING);
  });
});

describe('a workshop with records of its own', () => {
  it('keeps them, and the demo records they rest on', async () => {
    const { database } = test;
    await loadDemo(database, { clock });
    const bench = await database.design.findUniqueOrThrow({ where: { code: 'wall-shelf' } });
    const terms = (await database.costSheet.findFirstOrThrow()).terms ?? {};
    await database.costSheet.create({
      data: { title: 'My own', designId: bench.id, basis: 'shop', quantities: [1], terms },
    });
    await database.client.create({ data: { name: 'A client of my own' } });
    const { id: supplierId } = await database.supplier.findUniqueOrThrow({ where: { code: 'gridley-moss' } });
    const list = {
      supplierId,
      name: 'By telephone',
      validFrom: '2026-11-20',
      lines: [{ code: 'GM-1', unit: 'sheet', amount: '41' }],
    };
    await test.request.post('/api/price-lists').set(test.as('owner')).send(list).expect(201);
    const own = await database.material.create({ data: { code: 'MY-OAK', name: 'My oak', form: 'each' } });
    const { body } = await remove().expect(200);
    expect(body.kept).toMatchObject({ designs: 1, clients: 0, suppliers: 3, grades: 3 });
    expect(body.inventedName).toMatch(/invented/);
    expect(body.kept.materials).toBeGreaterThan(5);
    expect(body.kept.tools).toBeGreaterThan(2);
    expect(await countDemo(database)).toEqual(NOTHING);
    expect(await database.design.count()).toBe(1);
    expect(await database.priceList.count({ where: { name: 'By telephone' } })).toBe(1);
    expect(await database.client.count()).toBe(1);
    expect(await database.material.count({ where: { id: own.id } })).toBe(1);
    const sheet = await database.costSheet.findFirstOrThrow({ where: { title: 'My own' } });
    const asked = {
      designId: sheet.designId,
      basis: 'shop' as const,
      onDate: '2026-11-02',
      quantities: [1],
      terms: costTermsSchema.parse(sheet.terms),
    };
    const { columns } = costSheet(await gatherInput(database, asked, '2026-11-25'));
    expect(columns[0]?.classes.directMaterials.value.gt(0)).toBe(true);
  });

  it('is not mixed with the demo', async () => {
    const before = await allRows();
    const { body } = await load().expect(409);
    expect(body.errors.map(({ field }: { field: string }) => field)).toContain('tools');
    expect(await allRows()).toEqual(before);
  });
});
