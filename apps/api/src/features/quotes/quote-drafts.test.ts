import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { quoteCalls } from '../../../../../tests/api/quote-calls.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

const { get, post, drafted } = quoteCalls(() => test);

describe('a draft', () => {
  it('begins with a line of a cost sheet where one is named', async () => {
    const costSheet = { id: test.costSheetId, pieces: 4 };
    const body = { title: 'From a sheet', clientId: test.clientId, enquiryId: null, costSheet };
    const { body: quote } = await post('/api/quotes', body).expect(201);
    const { draft } = (await get(`/api/quote-revisions/${quote.currentRevisionId}`)).body;
    expect(draft.lines).toMatchObject([{ kind: 'cost-sheet', costSheetId: test.costSheetId, pieces: 4 }]);
    const unknown = { ...body, costSheet: { id: test.clientId, pieces: 1 } };
    const refused = await post('/api/quotes', unknown).expect(422);
    expect(refused.body.errors[0].field).toBe('costSheet.id');
  });

  it('is worked out while it is written, as it is once it is saved', async () => {
    const { id, draft } = await drafted('Unsaved');
    const saved = (await get(`/api/quote-revisions/${id}/figures?working=true`).expect(200)).body;
    const answer = await post('/api/quote-drafts/figures?working=true', { draft }).expect(200);
    expect(answer.body).toEqual(saved);
    expect(Number(saved.figures[saved.margin.hourlyEarnings].value)).toBeGreaterThan(0);
    const wrong = { ...draft, lines: [{ ...draft.lines[0], costSheetId: test.clientId }] };
    const refused = await post('/api/quote-drafts/figures', { draft: wrong }).expect(422);
    expect(refused.body.errors[0].field).toBe('lines.0.costSheetId');
  });

  it('is seen as the client will get it before it is sent, and takes no number by that', async () => {
    const { id, version } = await drafted('Seen before');
    const { body } = await get(`/api/quote-revisions/${id}/preview`).expect(200);
    expect(body.document.number).toBe('');
    expect(JSON.stringify(body)).not.toMatch(/costSheetId|"cost":/);
    const paper = await get(`/api/quote-revisions/${id}/preview/paper`).expect(200);
    expect(paper.headers['content-type']).toBe('application/pdf');
    expect(Buffer.from(paper.body).subarray(0, 5).toString()).toBe('%PDF-');
    const answer = await post(`/api/quote-revisions/${id}/send`, {}, version).expect(200);
    expect(answer.body.document).toEqual({ ...body.document, number: answer.body.number });
  });
});
