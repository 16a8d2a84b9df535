import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { acceptedQuote } from '../../../../../tests/api/accepted-quotes.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { postAs, sendQuote } from '../../../../../tests/api/sent-quotes.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

const get = (path: string) => test.request.get(path).set(test.as('read-only'));
const deliver = (quoteId: string, lines: object[]) =>
  postAs(test, `/api/quotes/${quoteId}/delivery-notes`, { deliveredOn: '2026-03-02', lines });

describe('delivery notes', () => {
  it('hand over in parts what was ordered, and never more', async () => {
    const { quoteId, revisionId } = await acceptedQuote(test, 'Delivered');
    const some = (quantity: string, lineId = 'shelves') =>
      deliver(quoteId, [{ revisionId, lineId, quantity }]);
    const { body: first } = await some('2').expect(201);
    expect(first.document.lines[0]).toMatchObject({ quantity: '2', ordered: '3', outstanding: '1' });
    expect((await some('2').expect(422)).body.errors[0].field).toBe('lines.0.quantity');
    expect((await some('0').expect(422)).body.errors[0].field).toBe('lines.0.quantity');
    expect((await some('1', 'lamp').expect(422)).body.errors[0].field).toBe('lines.0.lineId');
    const both = await Promise.all([some('1'), some('1')]);
    expect(both.map(({ status }) => status).toSorted()).toEqual([201, 422]);
    const { body } = await get(`/api/quotes/${quoteId}/delivery-notes`).expect(200);
    expect(body.notes).toHaveLength(2);
    expect(body.lines[0]).toMatchObject({ lineId: 'shelves', delivered: '3', outstanding: '0' });
  });

  it('are read with their paper by everybody who may read', async () => {
    const { quoteId, revisionId } = await acceptedQuote(test, 'Read');
    const { body: note } = await deliver(quoteId, [{ revisionId, lineId: 'shelves', quantity: '1' }]);
    const { body } = await get(`/api/delivery-notes/${note.id}`).expect(200);
    expect(body).toEqual(note);
    const paper = await get(`/api/documents/${note.paperId}`).expect(200);
    expect(paper.body.subarray(0, 5).toString()).toBe('%PDF-');
    await test.request.get(`/api/documents/${note.paperId}`).expect(401);
    await get('/api/delivery-notes/none').expect(404);
    await get('/api/delivery-notes/0193f6a0-0000-7000-8000-000000000009').expect(404);
  });

  it('are written after acceptance, by those who make', async () => {
    const { quoteId, id: revisionId } = await sendQuote(test, 'Not yet');
    const lines = [{ revisionId, lineId: 'shelves', quantity: '1' }];
    expect((await deliver(quoteId, lines).expect(409)).body.code).toBe('quote-state');
    const { body } = await get(`/api/quotes/${quoteId}/delivery-notes`).expect(200);
    expect(body).toMatchObject({ quote: { title: 'Not yet' }, notes: [], lines: [] });
    for (const role of ['read-only', 'bookkeeper'] as const)
      await test.request
        .post(`/api/quotes/${quoteId}/delivery-notes`)
        .set(test.as(role))
        .send({ deliveredOn: '2026-03-02', lines })
        .expect(403);
  });
});
