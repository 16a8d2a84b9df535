import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type QuotingWorkshop,
  quotedLines,
  startQuotingWorkshop,
} from '../../../../../tests/api/quoting-workshop.ts';
import { fillDraft, postAs, sendDraft } from '../../../../../tests/api/sent-quotes.ts';

let test: QuotingWorkshop;

const get = (path: string) => test.request.get(path).set(test.as('read-only'));

/** The workshop's shelves once more, at the prices of another day. @returns the id of the cost sheet */
async function sheetOf(title: string, onDate: string): Promise<string> {
  const { body } = await get(`/api/cost-sheets/${test.costSheetId}`).expect(200);
  const { designId, clientId, revision, variant, parameterValues, basis, quantities, terms } = body;
  const asked = { designId, clientId, revision, variant, parameterValues, basis, quantities, terms };
  return (await postAs(test, '/api/cost-sheets', { ...asked, title, onDate }).expect(201)).body.id;
}

beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

async function draftWith(title: string, lines: readonly object[]) {
  const begun = { title, clientId: test.clientId, enquiryId: null };
  const { body: quote } = await postAs(test, '/api/quotes', begun).expect(201);
  return (await fillDraft(test, quote.currentRevisionId, { lines })).body;
}

describe('a quote on a cost sheet with a material without a price', () => {
  it('says so while it is a draft and cannot be sent, until the price is there', async () => {
    // The shop's only price list begins in 2026, so a sheet at prices of 2025 has none for its ash.
    const earlySheetId = await sheetOf('Shelves of last year', '2025-06-01');
    const draft = await draftWith('Too low', quotedLines(earlySheetId));
    const worked = await get(`/api/quote-revisions/${draft.id}/figures`).expect(200);
    expect(worked.body.unpriced).toEqual([
      {
        lineId: 'shelves',
        costSheetId: earlySheetId,
        title: 'Shelves of last year',
        materials: [{ code: 'ASH-4', name: 'Ash 4/4', why: expect.stringContaining('price') }],
      },
    ]);

    const refused = await postAs(
      test,
      `/api/quote-revisions/${draft.id}/send`,
      undefined,
      draft.version,
    ).expect(422);
    const [problem] = refused.body.errors;
    expect(problem.field).toBe('lines.0.costSheetId');
    expect(problem.message).toContain('"Shelves of last year", whose price is too low (Ash 4/4 (ASH-4): ');
    expect(problem.mend.toLowerCase()).toContain('enter a price for it');
    const kept = await get(`/api/quote-revisions/${draft.id}`).expect(200);
    expect(kept.body).toMatchObject({ state: 'draft', number: null, version: draft.version });
    expect(await test.database.outboxMail.count()).toBe(0);

    await test.setPrice('2025-01-01', 6);
    const mended = await get(`/api/quote-revisions/${draft.id}/figures`).expect(200);
    expect(mended.body.unpriced).toEqual([]);
    expect((await sendDraft(test, draft.id, draft.version)).number).toMatch(/\S/);
  });

  it('is refused for an option too, since the client reads its price', async () => {
    const [shelves, ...rest] = quotedLines(test.costSheetId);
    const costSheetId = await sheetOf('Older shelves', '2020-01-01');
    const option = { ...shelves, id: 'more', choice: { kind: 'option' }, costSheetId };
    const draft = await draftWith('Option', [shelves, ...rest, option]);
    const path = `/api/quote-revisions/${draft.id}/send`;
    const refused = await postAs(test, path, undefined, draft.version).expect(422);
    expect(refused.body.errors[0].field).toBe('lines.5.costSheetId');
  });
});

it('what was sent is not set beside a cost of today that is too low', async () => {
  const draft = await draftWith('Sent in time', quotedLines(test.costSheetId));
  const sent = await sendDraft(test, draft.id, draft.version);
  await test.database.material.updateMany({ data: { code: 'ASH-5' } });
  await test.database.material.create({ data: { code: 'ASH-4', name: 'Ash 4/4', form: 'rough-lumber' } });
  const { body } = await get(`/api/quote-revisions/${sent.id}/today`).expect(200);
  expect(body.lines[0].costNow).toBeNull();
  expect(body.lines[0].problem).toContain('Ash 4/4 (ASH-4): no supplier has a price for it');
  expect(Number(body.figures[body.costMoved].value)).toBe(0);
  await test.database.material.deleteMany({ where: { code: 'ASH-4' } });
  await test.database.material.updateMany({ data: { code: 'ASH-4' } });
});

it('a past piece whose cost is too low is not scaled from', async () => {
  const id = await sheetOf('Bare shelves', '2020-01-01');
  const refused = await get(`/api/enquiries/past-pieces/${id}`).expect(422);
  expect(refused.body.errors[0]).toMatchObject({ field: 'id' });
  expect(refused.body.errors[0].message).toContain('"Bare shelves", whose cost is too low: Ash 4/4 (ASH-4)');
  expect(refused.body.errors[0].mend).toContain('Choose another past piece');
  await get(`/api/enquiries/past-pieces/${test.costSheetId}`).expect(200);
});
