import { setTimeout as wait } from 'node:timers/promises';
import type { AnswerOf, getPriceImpact, listPriceImpactRows } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { postAs, sendQuote } from '../../../../../tests/api/sent-quotes.ts';
import { workOutImpact } from './work-out-impact.ts';

type Row = AnswerOf<typeof listPriceImpactRows>['items'][number];
type Impact = AnswerOf<typeof getPriceImpact>;

let test: QuotingWorkshop;
let supplierId = '';

beforeAll(async () => {
  test = await startQuotingWorkshop();
  supplierId = (await test.database.supplier.findFirstOrThrow()).id;
});
afterAll(() => test.close());

const get = (path: string) => test.request.get(path).set(test.as('read-only'));

async function enterList(validFrom: string, amount: string): Promise<string> {
  const { body } = await postAs(test, '/api/price-lists', {
    supplierId,
    name: `List of ${validFrom}`,
    validFrom,
    taxRate: '0',
    taxRecoverable: '1',
    lines: [{ code: 'A44', material: 'ASH-4', unit: 'board-foot', amount, breakFrom: '0' }],
  }).expect(201);
  return body.id;
}

async function finished(listId: string): Promise<Impact> {
  for (;;) {
    const { body } = await get(`/api/price-lists/${listId}/impact`).expect(200);
    if (body.status !== 'waiting' && body.status !== 'working') return body;
    await wait(50);
  }
}

async function rowsOf(listId: string, query = ''): Promise<Row[]> {
  return (await get(`/api/price-lists/${listId}/impact/rows${query}`).expect(200)).body.items;
}

const amount = (row: Row | undefined, id: string | undefined | null) => Number(row?.figures[id ?? '']?.value);

describe('what a price list moves', () => {
  let listId = '';
  let sent: Awaited<ReturnType<typeof sendQuote>>;
  let draftId = '';

  beforeAll(async () => {
    sent = await sendQuote(test, 'Sent before the list');
    const begun = await postAs(test, '/api/quotes', {
      title: 'Draft on the same sheet',
      clientId: test.clientId,
      enquiryId: null,
      costSheet: { id: test.costSheetId, pieces: 2 },
    }).expect(201);
    draftId = begun.body.currentRevisionId;
    listId = await enterList('2026-03-01', '9');
  });

  it('begins when the list is taken over, and lists quotes and sheets, the most money first', async () => {
    const impact = await finished(listId);
    expect(impact).toMatchObject({
      status: 'done',
      moved: 3,
      undecided: 3,
      undecidedQuotes: 2,
      onDay: '2026-03-02',
    });
    const rows = await rowsOf(listId);
    expect(rows.map(({ kind }) => kind)).toEqual(['sent', 'draft', 'cost-sheet']);
    const stakes = rows.map((row) => Math.abs(amount(row, row.cost?.moved)));
    expect(stakes).toEqual([...stakes].sort((one, other) => other - one));
    expect(stakes.at(-1)).toBeGreaterThan(0);
    const [first] = rows;
    // 3 pieces, 2 shelves each; ash 6.4, now 9: the price quoted stands and the margin carries the whole of it.
    expect(first).toMatchObject({ revisionId: sent.id, number: sent.number, isOpen: true, decision: null });
    expect(first?.netPrice?.before).toBe(first?.netPrice?.after);
    const net = amount(first, first?.netPrice?.after);
    const after = amount(first, first?.cost?.after);
    expect(amount(first, first?.margin?.after)).toBeCloseTo((net - after) / net, 8);
    // The same as the quote's own comparison with today says.
    const today = (await get(`/api/quote-revisions/${sent.id}/today`).expect(200)).body;
    expect(after).toBeCloseTo(Number(today.figures[today.now.cost].value), 4);
    expect(amount(first, first?.cost?.before)).toBeCloseTo(
      Number(today.figures[today.whenSent.cost].value),
      4,
    );
    // A draft follows: its price moves with its cost.
    const draft = rows.find(({ revisionId }) => revisionId === draftId);
    expect(amount(draft, draft?.netPrice?.after)).toBeGreaterThan(amount(draft, draft?.netPrice?.before));
  });

  it('comes page by page', async () => {
    const first = (await get(`/api/price-lists/${listId}/impact/rows?limit=2`).expect(200)).body;
    const rest = await rowsOf(listId, `?limit=2&cursor=${first.next}`);
    expect([...first.items, ...rest].map(({ id }: Row) => id)).toEqual(
      (await rowsOf(listId)).map(({ id }) => id),
    );
  });

  it('keeps what is decided, with the reason and by whom, and moves it to the end', async () => {
    const [first] = await rowsOf(listId);
    const decide = (decision: string, reason = '', id = first?.id) =>
      postAs(test, `/api/price-impact-rows/${id}/decisions`, { decision, reason });
    const refused = await decide('hold');
    expect([refused.status, refused.body.errors[0].field]).toEqual([422, 'reason']);
    const held = await decide('hold', 'Promised by hand.').expect(200);
    expect(held.body.row.decision).toMatchObject({
      decision: 'hold',
      reason: 'Promised by hand.',
      decidedBy: 'test maker',
    });
    expect((await rowsOf(listId)).at(-1)?.id).toBe(first?.id);
    expect((await get('/api/price-impacts').expect(200)).body).toMatchObject({
      openQuotes: 1,
      items: [{ listId, undecided: 2 }],
    });
    // Worked out again, the decision stands.
    await postAs(test, `/api/price-lists/${listId}/impact`).expect(202);
    expect(await finished(listId)).toMatchObject({ moved: 3, undecided: 2 });
    expect((await rowsOf(listId)).at(-1)?.decision?.decision).toBe('hold');
    await decide('reopen').expect(200);
    expect((await rowsOf(listId))[0]).toMatchObject({ id: first?.id, decision: null });
    const revised = await decide('revise').expect(200);
    const made = (await get(`/api/quote-revisions/${revised.body.draftId}`).expect(200)).body;
    expect(made).toMatchObject({ state: 'draft', quoteId: sent.quoteId, revision: 2 });
    expect(await test.database.priceImpactDecision.count({ where: { rowId: first?.id ?? '' } })).toBe(3);
    const sheet = (await rowsOf(listId)).find(({ kind }) => kind === 'cost-sheet');
    const odd = await decide('revise', '', sheet?.id);
    expect([odd.status, odd.body.errors[0].field]).toEqual([422, 'decision']);
    await decide('accept', '', sheet?.id).expect(200);
    await test.request
      .post(`/api/price-impact-rows/${sheet?.id}/decisions`)
      .set(test.as('read-only'))
      .send({ decision: 'accept' })
      .expect(403);
  });

  it('leaves out what rests on other prices: the same amount again moves nothing, nor does a quote sent since', async () => {
    const again = await enterList('2026-03-02', '9');
    expect(await finished(again)).toMatchObject({ status: 'done', touched: 0, moved: 0 });
    const since = await sendQuote(test, 'Sent since');
    await postAs(test, `/api/price-lists/${listId}/impact`).expect(202);
    await finished(listId);
    expect((await rowsOf(listId)).map(({ revisionId }) => revisionId)).not.toContain(since.id);
  });

  it('goes on where a killed process stopped, and says why a row cannot be costed', async () => {
    const killed = await enterList('2026-03-03', '11');
    await finished(killed);
    const rows = await rowsOf(killed);
    expect(rows.length).toBeGreaterThan(1);
    // As a kill after the finding and one row leaves it.
    await test.database.priceImpact.update({ where: { listId: killed }, data: { status: 'working' } });
    await test.database.priceImpactRow.updateMany({
      where: { listId: killed, id: { not: rows[0]?.id ?? '' } },
      data: { isWorked: false },
    });
    await test.database.labourGrade.updateMany({ data: { code: 'gone' } });
    await workOutImpact(test.database, killed, '2026-03-03');
    const left = await rowsOf(killed);
    expect(left).toHaveLength(rows.length);
    expect(left[0]).toMatchObject({ id: rows[0]?.id, problem: null });
    expect(left[1]).toMatchObject({ cost: null, problem: expect.stringContaining('owner') });
    await test.database.labourGrade.updateMany({ data: { code: 'owner' } });
  });

  it('is asked for where it was not, and of lists that are there', async () => {
    await test.setPrice('2026-03-04', 12);
    const plain = await test.database.priceList.findFirstOrThrow({ orderBy: { validFrom: 'desc' } });
    expect((await get(`/api/price-lists/${plain.id}/impact`).expect(200)).body.status).toBe('none');
    await get('/api/price-lists/nothing/impact').expect(404);
    await postAs(test, '/api/price-lists/nothing/impact').expect(404);
  });
});
