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
  quotes: 0,
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
const config = readConfig({});
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

// Loading the whole demo takes longer than the usual time on a busy machine.
describe('removing the demo', { timeout: 180_000 }, () => {
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

/** A draft of the workshop's own for a client and a cost sheet of the demo. */
async function quoteOwn(clientId: string, costSheetId: string): Promise<void> {
  const body = { title: 'My own quote', clientId, enquiryId: null };
  const owner = test.as('owner');
  const { body: quote } = await test.request.post('/api/quotes').set(owner).send(body).expect(201);
  const path = `/api/quote-revisions/${quote.currentRevisionId}`;
  const { body: revision } = await test.request.get(path).set(owner).expect(200);
  const line = {
    kind: 'cost-sheet',
    id: 'chest',
    description: 'Chest',
    details: '',
    tax: revision.draft.taxes[0].id,
    choice: { kind: 'included' },
    pictures: [],
    costSheetId,
    pieces: 1,
  };
  await test.request
    .put(path)
    .set({ ...owner, 'if-match': `"${revision.version}"` })
    .send({ ...body, draft: { ...revision.draft, lines: [line] } })
    .expect(200);
}

describe('a workshop with records of its own', { timeout: 180_000 }, () => {
  it('keeps them, and the demo records they rest on', async () => {
    const { database } = test;
    await loadDemo(database, { clock, config });
    // Every design is loaded with its drawing.
    expect(await database.pictureUse.count({ where: { isCover: true, design: { isDemo: true } } })).toBe(12);
    const bench = await database.design.findUniqueOrThrow({ where: { code: 'wall-shelf' } });
    const terms = (await database.costSheet.findFirstOrThrow()).terms ?? {};
    await database.costSheet.create({
      data: { title: 'My own', designId: bench.id, basis: 'shop', quantities: [1], terms },
    });
    await database.client.create({ data: { name: 'A client of my own' } });
    const client = await database.client.findFirstOrThrow({ where: { name: 'Tobias Grenfallow' } });
    const quoted = await database.costSheet.findFirstOrThrow({ where: { design: { code: 'tool-chest' } } });
    await quoteOwn(client.id, quoted.id);
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
    expect(body.kept).toMatchObject({ designs: 2, clients: 1, suppliers: 3, grades: 3 });
    expect(body.inventedName).toMatch(/invented/);
    expect(body.kept.materials).toBeGreaterThan(5);
    expect(body.kept.tools).toBeGreaterThan(2);
    expect(await countDemo(database)).toEqual(NOTHING);
    expect(await database.design.count()).toBe(2);
    // The shelf and the chest keep their drawings, as pictures of the workshop's own; all others are gone.
    const uses = await database.pictureUse.findMany({ include: { picture: true, design: true } });
    expect(new Set(uses.map(({ design }) => design?.code))).toEqual(new Set(['wall-shelf', 'tool-chest']));
    expect(uses.every(({ picture }) => !picture.isDemo)).toBe(true);
    expect(await database.picture.count({ where: { uses: { none: {} } } })).toBe(1);
    expect(await database.picture.count()).toBe(uses.length + 1);
    expect(await database.quote.findMany()).toMatchObject([{ title: 'My own quote', isDemo: false }]);
    expect(await database.costSheet.count({ where: { id: quoted.id, isDemo: false } })).toBe(1);
    expect(await database.priceList.count({ where: { name: 'By telephone' } })).toBe(1);
    expect(await database.client.count()).toBe(2);
    expect(await database.material.count({ where: { id: own.id } })).toBe(1);
    const sheet = await database.costSheet.findFirstOrThrow({ where: { title: 'My own' } });
    const asked = {
      designId: sheet.designId,
      basis: 'shop' as const,
      onDate: '2026-11-02',
      quantities: [1],
      ownValues: [],
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
