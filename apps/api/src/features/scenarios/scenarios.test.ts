import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';

const PRICE = 'price/yard/A44/board-foot/0';
const YIELD = 'material/ASH-4/yield';
const PAY = 'labour/owner/pay-per-hour';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

const whatIf = (changes: Record<string, string>, working = false) =>
  test.request
    .post(`/api/cost-sheets/${test.costSheetId}/what-if?working=${working}`)
    .set(test.as('read-only'))
    .send({ changes });

const keep = (body: object, key: string) =>
  test.request
    .post(`/api/cost-sheets/${test.costSheetId}/scenarios`)
    .set({ ...test.as('maker'), 'idempotency-key': key })
    .send(body);

const change = (leaf: string, value: string) => ({ leaf, label: `label of ${leaf}`, value });

describe('what a cost sheet comes to with other values', () => {
  it('is told with every difference, and nothing is stored', async () => {
    const before = await test.database.costSheet.findMany();
    const { status, body } = await whatIf({ [PRICE]: '8', [PAY]: '36' }, true);
    expect(status).toBe(200);
    const [column] = body.columns;
    const net = column.results.find(({ name }: { name: string }) => name === 'netPrice');
    // Two shelves of the bill at 50 % of 4/4: the price follows the figures that the answer itself carries.
    const again = recalculate(body.figures);
    expect(again.get(net.figure)?.toString()).toBe(net.now);
    expect(Number(net.difference)).toBeCloseTo(Number(net.now) - Number(net.was), 9);
    expect(Number(net.share)).toBeCloseTo(Number(net.difference) / Number(net.was), 5);
    expect(body.changed).toEqual([
      { leaf: PRICE, label: 'price of A44', was: '6.4', now: '8' },
      { leaf: PAY, label: 'Owner: pay', was: '30', now: '36' },
    ]);
    expect(await test.database.costSheet.findMany()).toEqual(before);
  });

  it('agrees with the same sheet once the record says so', async () => {
    const tried = await whatIf({ [PRICE]: '7.1' });
    expect(Object.values(tried.body.figures).some((node) => Object.hasOwn(node as object, 'how'))).toBe(
      false,
    );
    await test.setPrice('2026-02-01', 7.1);
    const worked = await test.request
      .get(`/api/cost-sheets/${test.costSheetId}/figures`)
      .set(test.as('maker'));
    const net = tried.body.columns[0].results.find(({ name }: { name: string }) => name === 'netPrice');
    expect(worked.body.figures[worked.body.columns[0].price.netPrice].value).toBe(net.now);
  });

  it('is refused where a value cannot stand, with the leaf and the mend', async () => {
    const { status, body } = await whatIf({ [YIELD]: '1.5' });
    expect([status, body.errors]).toEqual([
      422,
      [{ field: `changes.${YIELD}`, message: 'cannot be more than the whole', mend: 'Enter 100 % or less.' }],
    ]);
    expect((await whatIf({ 'terms/policy/margin': '1' })).body.code).toBe('no-answer');
    expect((await whatIf({ [YIELD]: 'much' })).status).toBe(422);
  });
});

describe('a scenario', () => {
  const body = {
    name: 'Better boards',
    note: 'FAS',
    changes: [change(YIELD, '0.8'), change('material/ELM/yield', '0.7')],
  };

  it('is kept with who made it, worked out on the sheet of today, and names what is gone', async () => {
    const made = await keep(body, 'first');
    expect(made.status).toBe(201);
    expect(made.body).toMatchObject({ ...body, version: 1, isDemo: false });
    expect(made.body.madeBy).not.toBe('');
    const worked = await test.request.get(`/api/scenarios/${made.body.id}/figures`).set(test.as('read-only'));
    expect(worked.body.gone).toEqual(['material/ELM/yield']);
    expect(worked.body.changed).toMatchObject([{ leaf: YIELD, was: '0.5', now: '0.8' }]);
    const direct = await whatIf({ [YIELD]: '0.8' });
    expect(worked.body.columns).toEqual(direct.body.columns);

    await test.setPrice('2026-03-01', 9);
    const later = await test.request.get(`/api/scenarios/${made.body.id}/figures`).set(test.as('read-only'));
    expect(later.body.columns).not.toEqual(worked.body.columns);
  });

  it('is listed, changed at its version, and removed', async () => {
    const list = () =>
      test.request.get(`/api/cost-sheets/${test.costSheetId}/scenarios`).set(test.as('read-only'));
    const [first] = (await list()).body.items;
    const edit = (version: number) =>
      test.request
        .put(`/api/scenarios/${first.id}`)
        .set({ ...test.as('maker'), 'if-match': `"${version}"` })
        .send({ ...body, name: 'Best boards' });
    expect((await edit(1)).body).toMatchObject({ name: 'Best boards', version: 2 });
    expect((await edit(1)).status).toBe(412);
    const other = await keep({ ...body, name: 'Best boards' }, 'again');
    expect([other.status, other.body.errors[0].field]).toEqual([409, 'name']);
    await test.request
      .delete(`/api/scenarios/${first.id}`)
      .set({ ...test.as('maker'), 'if-match': '"2"' })
      .expect(204);
    expect((await list()).body.items).toEqual([]);
    await test.request.get(`/api/scenarios/${first.id}/figures`).set(test.as('maker')).expect(404);
  });

  it('is not for readers to keep, and names each leaf once', async () => {
    await test.request
      .post(`/api/cost-sheets/${test.costSheetId}/scenarios`)
      .set(test.as('read-only'))
      .send(body)
      .expect(403);
    const twice = await keep({ ...body, changes: [change(YIELD, '1'), change(YIELD, '0.9')] }, 'twice');
    expect([twice.status, twice.body.errors[0].message]).toEqual([422, 'names a leaf twice']);
    await test.request.get('/api/cost-sheets/nothing/scenarios').set(test.as('maker')).expect(404);
  });

  it('goes with its cost sheet', async () => {
    await keep({ ...body, name: 'Gone with it' }, 'gone');
    const sheet = await test.database.costSheet.findUniqueOrThrow({ where: { id: test.costSheetId } });
    await test.request
      .delete(`/api/cost-sheets/${test.costSheetId}`)
      .set({ ...test.as('maker'), 'if-match': `"${sheet.version}"` })
      .expect(204);
    expect(await test.database.scenario.count()).toBe(0);
  });
});
