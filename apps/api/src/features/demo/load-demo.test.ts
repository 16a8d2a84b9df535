import { costTermsSchema } from '@scantling/contracts';
import { costSheet, isInForce } from '@scantling/costing';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { createTestDatabase } from '../../../../../tests/api/test-database.ts';
import { readConfig } from '../../config.ts';
import { readShop } from '../../shop/read-shop.ts';
import { DEMO_EMAIL } from '../../sign-in/demo-rule.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';
import { offersFor } from '../price-lists/offers.ts';
import { removeDemoQuotes } from '../quotes/demo-quotes.ts';
import { countDemo } from './demo-content.ts';
import { demoFile } from './demo-files.ts';
import { DEMO_PASSWORD, loadDemo } from './load-demo.ts';
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
describe('the demo workshop', { timeout: 180_000 }, () => {
  it('is loaded with what is promised of it, by an owner only', async () => {
    await test.request.post('/api/demo').set(test.as('maker')).expect(403);
    const { body } = await load().expect(200);
    expect(body.isNew).toBe(true);
    expect(body.content).toMatchObject({ designs: 12, suppliers: 3, tools: 25, people: 3, clients: 10 });
    expect(body.content.prices).toBeGreaterThanOrEqual(400);
    const lists = await test.database.priceList.findMany({ orderBy: { validFrom: 'asc' } });
    const [first, last] = [lists[0], lists.at(-1)];
    const years =
      ((last?.validFrom.getTime() ?? 0) - (first?.validFrom.getTime() ?? 0)) / (365.25 * 24 * 3_600_000);
    expect(years).toBeGreaterThan(1.95);
    expect(lists.map((list) => list.currency)).toContain('EUR');
    const bySystem = await test.database.design.groupBy({ by: ['unitSystem'], _count: true });
    expect(bySystem.map(({ _count }) => _count)).toEqual([6, 6]);
    const main = await test.database.costSheet.findFirstOrThrow({
      orderBy: { createdAt: 'asc' },
      include: { design: true },
    });
    expect(main.design.code).toBe('hall-bench');
    const acquired = await test.database.tool.groupBy({ by: ['acquisition'] });
    expect(acquired).toHaveLength(5);
  });

  it('changes nothing when it is loaded again', async () => {
    const before = await allRows();
    const { body } = await load().expect(200);
    expect(body.isNew).toBe(false);
    expect(await allRows()).toEqual(before);
  });

  it('signs its user in with the stated password, on this machine', async () => {
    const { body } = await test.request
      .post('/api/auth/sign-in/email')
      .send({ email: DEMO_EMAIL, password: DEMO_PASSWORD })
      .expect(200);
    expect(body.user.email).toBe(DEMO_EMAIL);
  });

  it('has shop rates in which every yearly amount has one home', async () => {
    const { overhead } = await readShop(test.database, '2026-11-25');
    expect(overhead.proof.findings).toEqual([]);
    expect(overhead.proof.holds).toBe(true);
  });

  it('costs every design', async () => {
    const designs = await test.database.design.findMany({ orderBy: { code: 'asc' } });
    const sheet = await test.database.costSheet.findFirstOrThrow({
      where: { design: { code: 'hall-bench' } },
    });
    const terms = costTermsSchema.parse(sheet.terms);
    for (const { id, code } of designs) {
      const asked = {
        designId: id,
        basis: 'commission' as const,
        onDate: '2026-11-02',
        quantities: [1, 5],
        ownValues: [],
        terms,
      };
      const { columns, weight } = costSheet(await gatherInput(test.database, asked, '2026-11-25'));
      const [one, five] = columns;
      const cost = one?.perPiece.cost.value.toNumber() ?? 0;
      // A piece of furniture between a shelf and a bed: materials, hours and overhead in a plausible range.
      expect(cost, code).toBeGreaterThan(300);
      expect(cost, code).toBeLessThan(6000);
      expect(five?.perPiece.cost.value.lt(one?.perPiece.cost.value ?? 0), code).toBe(true);
      expect(one?.classes.directMaterials.value.gt(20), code).toBe(true);
      expect(one?.classes.workshopOverhead.value.gt(0), code).toBe(true);
      expect(weight.mass.value.toNumber(), code).toBeGreaterThan(2);
    }
  });

  it('has quotes in every state, one accepted with an addition', async () => {
    const quotes = await test.request.get('/api/quotes').set(test.as('read-only')).expect(200);
    const items: { id: string; state: string; hasOpenDraft: boolean }[] = quotes.body.items;
    const states = new Set(items.map(({ state }) => state));
    expect([...states].sort()).toEqual(['accepted', 'declined', 'draft', 'expired', 'sent', 'withdrawn']);
    const revisions = await test.database.quoteRevision.findMany({ select: { state: true, series: true } });
    expect(revisions.filter(({ state }) => state === 'superseded')).toHaveLength(1);
    const hotel = await test.database.quote.findFirstOrThrow({ where: { title: { contains: 'mirror' } } });
    const { body } = await test.request.get(`/api/quotes/${hotel.id}`).set(test.as('read-only')).expect(200);
    expect(body.contract.parts.map((part: { kind: string }) => part.kind)).toEqual(['quote', 'addition']);
    const numbers = await test.database.issuedNumber.groupBy({
      by: ['series', 'year'],
      _count: true,
      _max: { count: true },
    });
    for (const { _count, _max } of numbers) expect(_max.count).toBe(_count);
    for (const { id, state } of items.filter((one) => one.state !== 'draft')) {
      const { currentRevisionId } = (await test.request.get(`/api/quotes/${id}`).set(test.as('read-only')))
        .body;
      const path = `/api/quote-revisions/${currentRevisionId}`;
      const today = await test.request.get(`${path}/today`).set(test.as('read-only')).expect(200);
      expect(today.body.lines.length, state).toBeGreaterThan(0);
      expect(today.body.lines.map(({ problem }: { problem: string | null }) => problem)).toEqual([null]);
      const { body: worked } = await test.request
        .get(`${path}/figures`)
        .set(test.as('read-only'))
        .expect(200);
      expect(Number(worked.figures[worked.margin.margin].value), state).toBeGreaterThan(0);
    }
  });

  it('ends prices that its complete list does not name', async () => {
    const offers = await offersFor(test.database, ['beech-10-4', 'beech-8-4'], '2026-11-02', 'USD');
    expect(offers.get('beech-10-4')?.every((offer) => !isInForce(offer, '2026-11-02'))).toBe(true);
    expect(offers.get('beech-10-4')?.some((offer) => isInForce(offer, '2026-07-01'))).toBe(true);
    expect(offers.get('beech-8-4')?.some((offer) => isInForce(offer, '2026-11-02'))).toBe(true);
  });

  it('shows each price with the line of its file', async () => {
    const line = await test.database.priceLine.findFirstOrThrow({
      where: { list: { sourceName: 'messingfink-2025-01-20.csv' }, item: { code: 'MF20100' }, breakFrom: 0 },
      include: { item: { include: { material: true } } },
    });
    const rows = (await demoFile('price-lists/messingfink-2025-01-20.csv')).toString('utf8').split('\n');
    // The file has semicolons and decimal commas.
    const amount = line.amount.toFixed(2).replace('.', ',');
    expect(rows[line.rowNumber - 1]?.split(';').slice(0, 5)).toEqual([
      'MF20100',
      'Hardwax oil, clear satin',
      line.item.material?.code,
      'LTR',
      amount,
    ]);
  });
});

/** The demo's quotes, which nothing else may remove. */
const removeDemoQuotesAlone = (database: TestApplication['database']) =>
  database.$transaction((transaction) => removeDemoQuotes(transaction));

describe('the first start', { timeout: 180_000 }, () => {
  it('is not disturbed by another load at the same time', async () => {
    const { database, drop } = await createTestDatabase();
    try {
      const both = await Promise.allSettled([
        loadDemo(database, { clock, config }),
        loadDemo(database, { clock, config }),
      ]);
      expect(both.filter((one) => one.status === 'fulfilled' && one.value.isNew)).toHaveLength(1);
      for (const one of both)
        if (one.status === 'rejected') expect(one.reason).toMatchObject({ code: 'still-in-use' });
      expect(await countDemo(database)).toMatchObject({ designs: 12, tools: 25 });
    } finally {
      await drop();
    }
  });

  it('leaves everything as it was where loading fails on the way', async () => {
    const { database, drop } = await createTestDatabase();
    const noTime = () => {
      throw new Error('the clock stands still');
    };
    try {
      await expect(loadDemo(database, { clock: noTime, config })).rejects.toThrow('the clock stands still');
      expect(await countDemo(database)).toEqual(NOTHING);
      expect(await database.user.count()).toBe(0);
      expect(await database.workshop.count()).toBe(0);
    } finally {
      await drop();
    }
  });

  it('loads the demo once, and not where it is switched off', async () => {
    const { database, drop } = await createTestDatabase();
    try {
      const start = (set: string) =>
        loadDemoAtFirstStart.run({ config: readConfig({ SCANTLING_DEMO: set }), database });
      expect(await start('off')).toEqual([]);
      const [line, ...more] = await start('on');
      expect(line).toContain('12 designs');
      expect(more).toEqual([]);
      expect(await start('on')).toEqual([]);
      // As a power cut leaves it: what was entered last is not there, and the mark at the end is not set.
      const whole = await countDemo(database);
      await removeDemoQuotesAlone(database);
      await database.costSheet.deleteMany();
      await database.design.deleteMany();
      await database.priceList.deleteMany({ where: { isComplete: true } });
      await database.workshop.updateMany({ data: { hasDemo: false } });
      expect(await start('on')).toHaveLength(1);
      expect(await countDemo(database)).toEqual(whole);
    } finally {
      await drop();
    }
    // It is loaded twice, papers and all.
  });
});
