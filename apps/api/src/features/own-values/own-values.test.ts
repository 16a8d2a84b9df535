import { decimal } from '@scantling/decimals';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';

const PRICE = 'price/yard/A44/board-foot/0';
const YIELD = 'material/ASH-4/yield';
const PAY = 'labour/owner/pay-per-hour';
const RUN = 'bill/operation plane/run';

let test: QuotingWorkshop;
let otherId = '';
beforeAll(async () => {
  test = await startQuotingWorkshop();
  const { id: _id, ...row } = await test.database.costSheet.findUniqueOrThrow({
    where: { id: test.costSheetId },
  });
  const { parameterValues: _choice, ownValues: _own, terms, ...rest } = row;
  const other = await test.database.costSheet.create({
    data: { ...rest, title: 'The same for stock', terms: JSON.parse(JSON.stringify(terms)) },
  });
  otherId = other.id;
});
afterAll(() => test.close());

type Change = { leaf: string; value: string; reach: 'here' | 'everywhere' };
const here = (leaf: string, value: string): Change => ({ leaf, value, reach: 'here' });
const everywhere = (leaf: string, value: string): Change => ({ leaf, value, reach: 'everywhere' });

const preview = (...changes: Change[]) =>
  test.request
    .post(`/api/cost-sheets/${test.costSheetId}/changes/preview`)
    .set(test.as('maker'))
    .send({ changes });
const versionOf = async () =>
  (await test.database.costSheet.findUniqueOrThrow({ where: { id: test.costSheetId } })).version;
const apply = async (...changes: Change[]) =>
  test.request
    .post(`/api/cost-sheets/${test.costSheetId}/changes`)
    .set({ ...test.as('maker'), 'if-match': `"${await versionOf()}"` })
    .send({ changes });
const figures = async (id = test.costSheetId) =>
  (await test.request.get(`/api/cost-sheets/${id}/figures?working=true`).set(test.as('maker'))).body;
const netOf = (body: Awaited<ReturnType<typeof figures>>) =>
  body.figures[body.columns[0].price.netPrice].value;

describe('a value taken over here only', () => {
  it('stands on this sheet alone, says who gave it, and everything downstream follows', async () => {
    const before = await figures();
    const { status, body } = await apply(here(YIELD, '0.8'));
    expect([status, body.sheet.ownValues.length]).toEqual([200, 1]);
    expect(body.written[0]).toMatchObject({
      was: '0.5',
      now: '0.8',
      place: 'an own value of this cost sheet',
    });
    const after = await figures();
    expect(after.figures[YIELD].value).toBe('0.8');
    expect(after.figures[YIELD].source.text).toMatch(
      /^entered by .+ on 2026-03-02 for this cost sheet, instead of 50 % from material record ASH-4$/,
    );
    const net = body.columns[0].results.find(({ name }: { name: string }) => name === 'netPrice');
    expect([net.was, net.now]).toEqual([netOf(before), netOf(after)]);
    expect(decimal(netOf(after)).lt(netOf(before))).toBe(true);
    expect(netOf(await figures(otherId))).toBe(netOf(before));
  });

  it('goes into a quote that is drafted from the sheet', async () => {
    const made = await test.request
      .post('/api/quotes')
      .set(test.as('maker'))
      .send({
        title: 'Shelves',
        clientId: test.clientId,
        enquiryId: null,
        costSheet: { id: test.costSheetId, pieces: 1 },
      });
    expect(made.status).toBe(201);
    const [revision] = made.body.revisions;
    const read = await test.request.get(`/api/quote-revisions/${revision.id}`).set(test.as('maker'));
    const line = read.body.draft.lines[0];
    const worked = await test.request
      .get(`/api/quote-revisions/${revision.id}/lines/${line.id}/figures?working=true`)
      .set(test.as('maker'));
    expect(worked.body.figures[YIELD].value).toBe('0.8');
    const { body } = await preview(here(YIELD, '0.7'));
    expect(body.draftQuotes).toEqual([{ id: made.body.id, title: 'Shelves' }]);
  });

  it('is kept through an edit of the sheet, and taken back', async () => {
    const { body: sheet } = await test.request
      .get(`/api/cost-sheets/${test.costSheetId}`)
      .set(test.as('maker'));
    const { title, designId, clientId, basis, onDate, quantities, terms } = sheet;
    const edited = await test.request
      .put(`/api/cost-sheets/${test.costSheetId}`)
      .set({ ...test.as('maker'), 'if-match': `"${sheet.version}"` })
      .send({ title: `${title}, long`, designId, clientId, basis, onDate, quantities, terms });
    expect(edited.body.ownValues).toEqual(sheet.ownValues);
    const takeBack = async () =>
      test.request
        .delete(`/api/cost-sheets/${test.costSheetId}/own-values`)
        .query({ leaf: YIELD })
        .set({ ...test.as('maker'), 'if-match': `"${await versionOf()}"` });
    expect((await takeBack()).body.ownValues).toEqual([]);
    expect((await figures()).figures[YIELD].value).toBe('0.5');
    expect((await takeBack()).body.errors[0].field).toBe('query.leaf');
  });

  it('of the terms is a term of the sheet', async () => {
    const { body } = await apply(here('terms/policy/margin', '0.4'), everywhere('terms/freight', '12'));
    expect(body.sheet.terms).toMatchObject({ policy: { kind: 'margin', margin: '0.4' }, freight: '12' });
    expect(body.sheet.ownValues).toEqual([]);
  });

  it('says when its leaf is gone', async () => {
    await apply(here(RUN, '0.75'));
    await test.database.costSheet.updateMany({
      where: { id: test.costSheetId },
      data: {
        ownValues: [
          {
            leaf: 'bill/operation turn/run',
            label: 'Turn: run time',
            value: '2',
            by: 'Greta',
            on: '2026-03-01',
          },
        ],
      },
    });
    const { notices } = await figures();
    expect(notices).toContainEqual(
      expect.objectContaining({ kind: 'own-value-gone', about: 'Turn: run time' }),
    );
    await test.database.costSheet.updateMany({ data: { ownValues: [] } });
  });
});

describe('a value taken over everywhere', () => {
  it('is seen before: what it comes to, what else rests on it; and nothing is changed', async () => {
    const before = [await figures(), await figures(otherId)];
    const { status, body } = await preview(
      everywhere(PAY, '40'),
      everywhere(PRICE, '9'),
      everywhere(RUN, '1'),
    );
    expect(status).toBe(200);
    expect(body.written.map(({ place }: { place: string }) => place)).toEqual([
      'labour grade "Owner"',
      expect.stringMatching(
        /^a new price list of 2026-03-02, "Entered for the cost sheet .*", beside "2026-01-01"$/,
      ),
      'the design "Shelf", as revision 3',
    ]);
    expect(body.otherSheets).toMatchObject([{ id: otherId, was: netOf(before[1]) }]);
    expect(decimal(body.otherSheets[0].now).gt(body.otherSheets[0].was)).toBe(true);
    expect([await figures(), await figures(otherId)]).toEqual(before);
    expect(await test.database.priceList.count()).toBe(1);
  });

  it('changes the records, each by its own rules, and all sheets that rest on them', async () => {
    const foreseen = await preview(everywhere(PAY, '40'), everywhere(PRICE, '9'), everywhere(RUN, '1'));
    const { status, body } = await apply(everywhere(PAY, '40'), everywhere(PRICE, '9'), everywhere(RUN, '1'));
    expect(status).toBe(200);
    expect(body.columns).toEqual(foreseen.body.columns);
    expect(body.otherSheets).toEqual(foreseen.body.otherSheets);
    const after = await figures();
    expect([PAY, PRICE, RUN].map((key) => after.figures[key].value)).toEqual(['40', '9', '1']);
    expect(netOf(await figures(otherId))).toBe(body.otherSheets[0].now);
    expect(after.figures[PRICE].source.text).toContain('Entered for the cost sheet');
    // Prices are kept for good: the old line is still there.
    expect(await test.database.priceLine.count()).toBe(2);
    const design = await test.database.design.findUniqueOrThrow({ where: { id: test.designId } });
    expect(design.version).toBe(3);
  });

  it('takes the place of the own value there was', async () => {
    await apply(here(YIELD, '0.9'));
    const { body } = await apply(everywhere(YIELD, '0.6'));
    expect(body.sheet.ownValues).toEqual([]);
    const { source, value } = (await figures()).figures[YIELD];
    expect([value, source.kind]).toEqual(['0.6', 'shop-rate']);
  });

  it('is taken whole or not at all, and names every value that cannot be', async () => {
    const before = await figures();
    const pack = `${PRICE.slice(0, -2)}/sold-in`;
    const refusedByRecord = await apply(everywhere(PAY, '50'), everywhere(PRICE, '1.23456789'));
    expect([refusedByRecord.status, refusedByRecord.body.errors[0].field]).toEqual([422, 'changes.1.value']);
    expect((await figures()).figures[PAY].value).toBe(before.figures[PAY].value);
    const refused = await apply(
      everywhere(YIELD, '2'),
      here('material/ELM/yield', '1'),
      everywhere(pack, '5'),
    );
    expect(refused.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      'changes.0.value',
      'changes.1.leaf',
      'changes.2.leaf',
    ]);
  });

  it('is refused at an old version, on a pinned revision, and to readers', async () => {
    const stale = await test.request
      .post(`/api/cost-sheets/${test.costSheetId}/changes`)
      .set({ ...test.as('maker'), 'if-match': '"1"' })
      .send({ changes: [here(YIELD, '0.7')] });
    expect(stale.status).toBe(412);
    await test.request
      .post(`/api/cost-sheets/${test.costSheetId}/changes/preview`)
      .set(test.as('read-only'))
      .send({ changes: [here(YIELD, '0.7')] })
      .expect(403);
    await test.database.costSheet.update({ where: { id: test.costSheetId }, data: { revision: 2 } });
    const pinned = await preview(everywhere(RUN, '2'));
    expect(pinned.body.errors[0]).toMatchObject({
      field: 'changes.0.value',
      message: expect.stringMatching(/pinned to revision 2/),
    });
  });
});
