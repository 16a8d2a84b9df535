import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { rowsOfChange, sendPriceList } from '../../../../../tests/api/send-price-list.ts';

let api: TestApplication;
let supplierId: string;

beforeAll(async () => {
  api = await startTestApplication();
  const supplier = await api.request
    .post('/api/suppliers')
    .set(api.as('maker'))
    .send({ code: 'TERMS', name: 'Invented terms', currency: 'EUR', taxRate: '0.2' })
    .expect(201);
  supplierId = supplier.body.id;
  await api.request
    .post('/api/materials')
    .set(api.as('maker'))
    .send({ code: 'ASH-4/4', name: 'Ash', form: 'rough-lumber' })
    .expect(201);
});

afterAll(() => api.close());

const send = (content: string, query: Record<string, string>) =>
  sendPriceList(api, content, { supplierId, ...query });
const rowsOf = (id: string, change: string) => rowsOfChange(api, id, change);
const apply = (id: string) =>
  api.request.post(`/api/price-imports/${id}/apply`).set(api.as('maker')).send({});

describe('a price on its way in', () => {
  it('calls other terms a change, whatever the amounts do', async () => {
    const file = 'code;unit;price;material;lead days\nT;each;5,00;ASH-4/4;7\n';
    await apply((await send(file, { validFrom: '2026-01-01' })).id).expect(200);
    const readAs = async (text: string, query: Record<string, string> = {}) => {
      const read = await send(text, { validFrom: '2026-02-01', ...query });
      await api.request.post(`/api/price-imports/${read.id}/discard`).set(api.as('maker')).expect(200);
      return Object.entries(read.counts).find(([, count]) => count === 1)?.[0];
    };
    const row = (price: string, material = '', days = '7') =>
      `code;unit;price;material;lead days\nT;each;${price};${material};${days}\n`;
    expect(await readAs(row('5,0000'))).toBe('unchanged');
    expect(await readAs(row('5,01'))).toBe('dearer');
    expect(await readAs(row('4,99'))).toBe('cheaper');
    expect(await readAs(row('4,99'), { currency: 'USD' })).toBe('changed');
    expect(await readAs(row('4,99'), { taxIncluded: 'true' })).toBe('changed');
    expect(await readAs(row('4,99'), { taxRate: '0.1' })).toBe('changed');
    expect(await readAs(row('4,99'), { taxRecoverable: '0.5' })).toBe('changed');
    expect(await readAs(row('5', '', '8'))).toBe('changed');
    expect(await readAs(row('5', 'ASH-4/4'))).toBe('unchanged');

    const inDollars = await send(row('6,00'), { validFrom: '2026-02-01', currency: 'USD' });
    expect(await rowsOf(inDollars.id, 'changed')).toMatchObject([
      { currency: 'USD', before: '5', beforeCurrency: 'EUR', line: { amount: '6' } },
    ]);
    const open = await api.request
      .get('/api/price-imports')
      .query({ supplierId, state: 'open' })
      .set(api.as('read-only'))
      .expect(200);
    expect(open.body.items).toMatchObject([{ id: inDollars.id, status: 'previewed' }]);
    const ended = await api.request
      .get('/api/price-imports')
      .query({ supplierId, state: 'ended', limit: 3 })
      .set(api.as('read-only'))
      .expect(200);
    expect(ended.body.items.map(({ status }: { status: string }) => status)).toEqual(
      Array(3).fill('discarded'),
    );
    const more = await api.request
      .get('/api/price-imports')
      .query({ supplierId, state: 'ended', cursor: ended.body.next })
      .set(api.as('read-only'))
      .expect(200);
    expect(more.body.items.map(({ status }: { status: string }) => status).at(-1)).toBe('applied');
    expect(more.body.items).toHaveLength(7);
    await api.request.post(`/api/price-imports/${inDollars.id}/discard`).set(api.as('maker')).expect(200);
  });

  it('keeps apart what control characters would join, and refuses none of it', async () => {
    const text = 'code;unit;price;description\nU\u001f1;each;1;a\u001fb\nU2;each;2;\u0001c\n';
    const read = await send(text, { validFrom: '2026-02-02' });
    expect(await rowsOf(read.id, 'new')).toMatchObject([
      { line: { code: 'U 1', amount: '1', description: 'a b' } },
      { line: { code: 'U2', amount: '2', description: 'c' } },
    ]);
    await api.request.post(`/api/price-imports/${read.id}/discard`).set(api.as('maker')).expect(200);
  });
});
