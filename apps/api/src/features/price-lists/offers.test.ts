import { boughtCost, lineAt, offersInForce } from '@scantling/costing';
import { input, toTable } from '@scantling/figures';
import { NoExchangeRateError } from '@scantling/money';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { offersFor } from './offers.ts';

let api: TestApplication;
let supplierId: string;
let materialId: string;

beforeAll(async () => {
  api = await startTestApplication();
  const as = api.as('maker');
  const supplier = { code: 'YARD', name: 'Invented yard', currency: 'EUR', taxRate: '0.2', leadDays: 9 };
  supplierId = (await api.request.post('/api/suppliers').set(as).send(supplier).expect(201)).body.id;
  const material = { code: 'ASH', name: 'Ash', form: 'rough-lumber' };
  materialId = (await api.request.post('/api/materials').set(as).send(material).expect(201)).body.id;
});

afterAll(() => api.close());

function enter(validFrom: string, lines: object[], terms: object = {}) {
  return api.request
    .post('/api/price-lists')
    .set(api.as('maker'))
    .send({ supplierId, name: `List of ${validFrom}`, validFrom, lines, ...terms });
}

const line = (amount: string, more: object = {}) => ({
  code: 'A',
  material: 'ASH',
  unit: 'board-foot',
  amount,
  ...more,
});

describe('the offers for a material', () => {
  it('are those of lists dated by the day, breaks together, newest first', async () => {
    await enter('2026-01-01', [line('6.40'), line('5.90', { breakFrom: '100' })]).expect(201);
    // A later list that names one break leaves the other as it was.
    await enter('2026-02-01', [line('6.80')]).expect(201);
    const before = await offersFor(api.database, ['ASH'], '2025-12-31', 'EUR');
    expect(before.get('ASH')).toBeUndefined();
    const offers = (await offersFor(api.database, ['ASH', 'NONE'], '2026-02-10', 'EUR')).get('ASH') ?? [];
    expect(offers.map(({ listDate }) => listDate)).toEqual(['2026-02-01', '2026-01-01']);
    expect(offers[0]).toMatchObject({
      supplier: 'YARD',
      code: 'A',
      unit: 'board-foot',
      breaks: [
        { from: '0', amount: '6.8' },
        // What holds on is named by the list it stands on.
        { from: '100', amount: '5.9', line: { listDate: '2026-01-01', row: 2 } },
      ],
      row: 1,
      leadDays: 9,
      tax: { isIncluded: false, rate: '0.2', recoverableShare: '1' },
    });
    expect(offers[0]).not.toHaveProperty('exchange');
    const [newest] = offers;
    if (newest === undefined) throw new Error('there is no offer');
    expect([lineAt(newest, '99.9').listDate, lineAt(newest, 100).listDate]).toEqual([
      '2026-02-01',
      '2026-01-01',
    ]);
    const need = input({
      key: 'need',
      label: 'needed',
      unit: 'bd ft',
      value: '100',
      source: { kind: 'entered', text: 'entered' },
    });
    const { figures } = toTable({ cost: boughtCost('ash', newest, need).cost }, { withDerivations: true });
    const said = JSON.stringify(figures);
    expect(said).toMatch(/of 2026-02-01, line 1 \(A\)/);
    expect(said).toMatch(/of 2026-01-01, line 2 \(A\)/);
  });

  it('end with a later complete list that does not name them, and not with one that is not complete', async () => {
    await enter('2026-03-01', [{ code: 'B', unit: 'each', amount: '1' }]).expect(201);
    const still = (await offersFor(api.database, ['ASH'], '2026-03-02', 'EUR')).get('ASH') ?? [];
    expect(offersInForce(still, '2026-03-02')).toHaveLength(1);
    await enter('2026-04-01', [{ code: 'B', unit: 'each', amount: '1' }], { isComplete: true }).expect(201);
    const ended = (await offersFor(api.database, ['ASH'], '2026-04-01', 'EUR')).get('ASH') ?? [];
    expect(ended.map(({ endedFrom }) => endedFrom)).toEqual(['2026-04-01', '2026-04-01']);
    expect(offersInForce(ended, '2026-04-01')).toEqual([]);
    // What the complete list ended does not come back with a break of a later one.
    await enter('2026-05-01', [line('7', { breakFrom: '10' })]).expect(201);
    const back = (await offersFor(api.database, ['ASH'], '2026-05-01', 'EUR')).get('ASH') ?? [];
    expect(back[0]).toMatchObject({ breaks: [{ from: '0', amount: '7' }], minimumQuantity: '10' });
  });

  it('are exchanged by the newest rate dated on or before the day, entered either way round', async () => {
    await expect(offersFor(api.database, ['ASH'], '2026-05-01', 'USD')).rejects.toThrow(NoExchangeRateError);
    const rate = (onDate: string, from: string, to: string, value: string) =>
      api.request
        .post('/api/exchange-rates')
        .set(api.as('bookkeeper'))
        .send({ onDate, from, to, rate: value, source: 'bank' });
    await rate('2026-04-01', 'EUR', 'USD', '1.10').expect(201);
    await rate('2026-05-01', 'USD', 'EUR', '0.80').expect(201);
    await rate('2026-06-01', 'EUR', 'USD', '9').expect(201);
    await rate('2026-06-01', 'EUR', 'EUR', '1').expect(422);
    const on = async (day: string) =>
      (await offersFor(api.database, ['ASH'], day, 'USD')).get('ASH')?.[0]?.exchange;
    expect(await on('2026-05-20')).toMatchObject({
      to: 'USD',
      rate: '1.25',
      onDate: '2026-05-01',
      source: '1 USD = 0.8 EUR of 2026-05-01, bank',
    });
    const rates = await api.request
      .get('/api/exchange-rates')
      .query({ limit: 2 })
      .set(api.as('read-only'))
      .expect(200);
    expect(rates.body.items.map(({ onDate }: { onDate: string }) => onDate)).toEqual([
      '2026-06-01',
      '2026-05-01',
    ]);
    const more = await api.request
      .get('/api/exchange-rates')
      .query({ cursor: rates.body.next })
      .set(api.as('read-only'))
      .expect(200);
    expect(more.body.items).toHaveLength(1);
  });

  it('are the history of the material, with the day on which each ended', async () => {
    const first = await api.request
      .get(`/api/materials/${materialId}/prices`)
      .query({ limit: 3 })
      .set(api.as('read-only'))
      .expect(200);
    const rest = await api.request
      .get(`/api/materials/${materialId}/prices`)
      .query({ cursor: first.body.next })
      .set(api.as('read-only'))
      .expect(200);
    const all = [...first.body.items, ...rest.body.items];
    expect(all.map(({ list, endedFrom }) => [list.validFrom, endedFrom])).toEqual([
      ['2026-05-01', null],
      ['2026-02-01', '2026-04-01'],
      ['2026-01-01', '2026-04-01'],
      ['2026-01-01', '2026-04-01'],
    ]);
  });
});

describe('a list entered by hand', () => {
  it('is refused whole, every line named', async () => {
    const lists = await api.database.priceList.count();
    const refused = await enter('2026-07-01', [
      line('1'),
      line('2'),
      line('3', { breakFrom: '5', material: 'NONE' }),
    ]).expect(422);
    expect(refused.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      'lines.1.code',
      'lines.2.material',
    ]);
    await enter('2026-07-01', [line('1')], { validTo: '2026-06-01' }).expect(422);
    expect(await api.database.priceList.count()).toBe(lists);
  });

  it("is listed, and a supplier's article can be unlinked and linked", async () => {
    const as = api.as('maker');
    const lists = await api.request
      .get('/api/price-lists')
      .query({ supplierId, limit: 1 })
      .set(as)
      .expect(200);
    expect(lists.body.items[0]).toMatchObject({ validFrom: '2026-05-01', lineCount: 1, currency: 'EUR' });
    const linked = await api.request
      .get('/api/supplier-items')
      .query({ supplierId, linked: 'true' })
      .set(as)
      .expect(200);
    const [item] = linked.body.items;
    expect(item.material.code).toBe('ASH');
    // Those of all suppliers, page by page; two may have the same code.
    const other = await api.database.supplier.create({
      data: { code: 'other-yard', name: 'Another Yard (invented)', currency: 'EUR' },
    });
    await api.database.supplierItem.create({
      data: { supplierId: other.id, code: item.code, description: 'The same code' },
    });
    const all: { id: string; supplierId: string; code: string }[] = [];
    let cursor: string | undefined;
    do {
      const page = await api.request
        .get('/api/supplier-items')
        .query({ limit: 1, ...(cursor === undefined ? {} : { cursor }) })
        .set(as)
        .expect(200);
      all.push(...page.body.items);
      cursor = page.body.next ?? undefined;
    } while (cursor !== undefined);
    expect(all).toHaveLength(await api.database.supplierItem.count());
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(
      all
        .filter(({ code }) => code === item.code)
        .map((one) => one.supplierId)
        .sort(),
    ).toEqual([supplierId, other.id].sort());
    const link = (id: string | null) =>
      api.request.put(`/api/supplier-items/${item.id}/material`).set(as).send({ materialId: id });
    expect((await link(null).expect(200)).body.material).toBeNull();
    expect(await offersFor(api.database, ['ASH'], '2026-05-01', 'EUR')).toEqual(new Map());
    await link('nothing').expect(422);
    expect((await link(materialId).expect(200)).body.material.code).toBe('ASH');
  });
});
