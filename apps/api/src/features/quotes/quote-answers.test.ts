import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { fillDraft, postAs, sendDraft, sendQuote } from '../../../../../tests/api/sent-quotes.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterEach(() => test.setTime('2026-03-02'));
afterAll(() => test.close());

const get = (path: string) => test.request.get(path).set(test.as('read-only'));
const byHand = (id: string, version: number, body: object = {}) =>
  postAs(test, `/api/quote-revisions/${id}/accept`, { name: 'Greta L.', how: 'by phone', ...body }, version);

describe('an answer written down by hand', () => {
  it('keeps who said it, how, and who wrote it down', async () => {
    const { id, version } = await sendQuote(test, 'By phone');
    await byHand(id, version - 1).expect(412);
    const { body } = await byHand(id, version, { chosen: ['lamp'], remark: 'Before Easter' }).expect(200);
    expect(body).toMatchObject({
      state: 'accepted',
      acceptance: { name: 'Greta L.', remark: 'Before Easter', chosen: ['lamp'] },
    });
    expect(body.acceptance.by).toMatchObject({ kind: 'workshop', how: 'by phone' });
    expect(body.acceptance.by.actor).toMatch(/^token:/);
    expect(body.total).toBe(body.acceptance.totals.total);
    const { body: figures } = await get(`/api/quote-revisions/${id}/figures`).expect(200);
    expect(figures.isFrozen).toBe(true);
    expect(figures.figures[figures.totals.total].value).toBe(body.total);
  });

  it('may have been said while the quote still held', async () => {
    const { id, version } = await sendQuote(test, 'Said in time', { validDays: 5 });
    test.setTime('2026-03-20');
    const late = await byHand(id, version).expect(409);
    expect(late.body).toMatchObject({ code: 'quote-state' });
    for (const onDate of ['2026-03-01', '2026-03-21'])
      expect((await byHand(id, version, { onDate }).expect(422)).body.errors[0].field).toBe('onDate');
    await byHand(id, version, { onDate: '2026-03-06' }).expect(200);
  });

  it('can be a no', async () => {
    const { id, version } = await sendQuote(test, 'No');
    const answer = await postAs(test, `/api/quote-revisions/${id}/decline`, { reason: 'Too dear' }, version);
    expect(answer.body).toMatchObject({ state: 'declined', decline: { reason: 'Too dear' } });
    await byHand(id, answer.body.version).expect(409);
  });
});

describe('an enquiry', () => {
  it('is quoted when its quote is sent, and won when that is accepted', async () => {
    const { enquiry } = test.database;
    const { id } = await enquiry.create({
      data: { name: 'Shelves', receivedOn: new Date('2026-02-20'), source: 'website' },
    });
    const begun = { title: 'Asked for', clientId: test.clientId, enquiryId: 'none' };
    const refused = await postAs(test, '/api/quotes', begun).expect(422);
    expect(refused.body.errors[0].field).toBe('enquiryId');
    const { body: quote } = await postAs(test, '/api/quotes', { ...begun, enquiryId: id }).expect(201);
    const { body: filled } = await fillDraft(test, quote.currentRevisionId, {}, id);
    const { id: sentId, version } = await sendDraft(test, filled.id, filled.version);
    expect(await enquiry.findUnique({ where: { id } })).toMatchObject({ outcome: 'quoted', outcomeOn: null });
    await byHand(sentId, version).expect(200);
    const won = await enquiry.findUniqueOrThrow({ where: { id } });
    expect([won.outcome, won.outcomeOn?.toISOString().slice(0, 10)]).toEqual(['won', '2026-03-02']);
  });
});

describe('a revision', () => {
  it('replaces what was sent when it is sent itself, under the same number and a link of its own', async () => {
    const first = await sendQuote(test, 'Revised');
    const { body: draft } = await postAs(test, `/api/quote-revisions/${first.id}/revise`).expect(201);
    expect(draft).toMatchObject({ state: 'draft', revision: 2, number: null, document: null });
    const again = await postAs(test, `/api/quote-revisions/${first.id}/revise`).expect(201);
    expect(again.body.id).toBe(draft.id);
    expect((await test.request.get(first.link)).body.state).toBe('open');
    const { body: filled } = await fillDraft(test, draft.id, {
      discount: { kind: 'amount', amount: '20' },
    });
    const second = await sendDraft(test, filled.id, filled.version);
    expect(second.number).toBe(first.number);
    expect((await test.request.get(first.link)).body).toMatchObject({ state: 'replaced', document: null });
    expect((await test.request.get(second.link)).body).toMatchObject({
      state: 'open',
      document: { revision: 2, discount: { kind: 'amount', amount: '20' } },
    });
    const { body: quote } = await get(`/api/quotes/${first.quoteId}`).expect(200);
    expect(quote).toMatchObject({ state: 'sent', currentRevisionId: second.id, hasOpenDraft: false });
    expect(quote.revisions.map((one: { state: string }) => one.state)).toEqual(['sent', 'superseded']);
    const late = await test.request
      .post(`${first.link}/accept`)
      .send({ name: 'Greta', chosen: [], documentHash: first.hash });
    expect(late.status).toBe(409);
    expect(late.body.detail).toContain('replaced by a newer one');
    await postAs(test, `/api/quote-revisions/${first.id}/revise`).expect(409);
  });
});

describe('an addition', () => {
  it('is accepted on top of the original, which stays as it was', async () => {
    const original = await sendQuote(test, 'With an addition');
    await postAs(test, `/api/quotes/${original.quoteId}/additions`, {}).expect(409);
    await byHand(original.id, original.version).expect(200);
    const before = await test.database.quoteRevision.findUniqueOrThrow({ where: { id: original.id } });
    const { body: draft } = await postAs(test, `/api/quotes/${original.quoteId}/additions`, {}).expect(201);
    expect(draft).toMatchObject({ kind: 'addition', series: 1, revision: 1, draft: { lines: [] } });
    expect(draft.title).toBe('Addition to With an addition');
    const line = {
      kind: 'free',
      id: 'drawer',
      description: 'A drawer more',
      details: '',
      tax: 'full',
      choice: { kind: 'included' },
      pictures: [],
      quantity: '1',
      unit: 'piece',
      price: '100',
      cost: '60',
    };
    const { body: filled } = await fillDraft(test, draft.id, { lines: [line] });
    const addition = await sendDraft(test, filled.id, filled.version);
    expect(addition.number).toBe(`${original.number}-A1`);
    const { document } = (await test.request.get(addition.link)).body;
    expect(document).toMatchObject({
      kind: 'addition',
      addsTo: { number: original.number, acceptedOn: '2026-03-02' },
      totals: { total: '120' },
    });
    const open = (await get(`/api/quotes/${original.quoteId}`)).body;
    expect(open).toMatchObject({ state: 'accepted', hasOpenDraft: true });
    expect(open.contract.parts).toHaveLength(1);
    await test.request
      .post(`${addition.link}/accept`)
      .send({ name: 'Greta', chosen: [], documentHash: addition.hash })
      .expect(200);
    const { contract } = (await get(`/api/quotes/${original.quoteId}`)).body;
    expect(contract.parts.map((part: { number: string }) => part.number)).toEqual([
      original.number,
      `${original.number}-A1`,
    ]);
    expect(Number(contract.figures[contract.total].value)).toBeCloseTo(Number(before.total) + 120, 6);
    expect(await test.database.quoteRevision.findUniqueOrThrow({ where: { id: original.id } })).toEqual(
      before,
    );
  });
});

describe('the title of an addition', () => {
  it('is its own on paper, in the mail and in the list, and leaves the quote its title', async () => {
    const original = await sendQuote(test, 'Shelves for the hall');
    await byHand(original.id, original.version).expect(200);
    const begun = { title: 'A drawer for gloves' };
    const { body: draft } = await postAs(test, `/api/quotes/${original.quoteId}/additions`, begun).expect(
      201,
    );
    const { body: named } = await fillDraft(test, draft.id, {});
    expect(named.title).toBe('A drawer for gloves');
    const { body: renamed } = await test.request
      .put(`/api/quote-revisions/${draft.id}`)
      .set({ ...test.as('maker'), 'if-match': `"${named.version}"` })
      .send({ title: 'Two drawers', clientId: named.clientId, enquiryId: null, draft: named.draft })
      .expect(200);
    const addition = await sendDraft(test, draft.id, renamed.version);
    expect((await test.request.get(addition.link)).body.document.title).toBe('Two drawers');
    const { body: quote } = await get(`/api/quotes/${original.quoteId}`).expect(200);
    expect(quote.title).toBe('Shelves for the hall');
    expect(quote.revisions.map(({ title }: { title: string }) => title).sort()).toEqual([
      'Shelves for the hall',
      'Two drawers',
    ]);
    const mail = await test.database.outboxMail.findFirst({
      where: { subject: { contains: 'Two drawers' } },
    });
    expect(mail?.subject).toContain(`${original.number}-A1`);
    const { body: revised } = await postAs(test, `/api/quote-revisions/${draft.id}/revise`).expect(201);
    expect(revised.title).toBe('Two drawers');
  });
});

describe('what was sent, beside today', () => {
  it('shows which leaves have moved and the margin then and now, and changes nothing', async () => {
    const sent = await sendQuote(test, 'Compared');
    const before = await test.database.quoteRevision.findUniqueOrThrow({ where: { id: sent.id } });
    const today = async () => (await get(`/api/quote-revisions/${sent.id}/today`).expect(200)).body;
    const same = await today();
    expect(same.lines).toMatchObject([{ id: 'shelves', problem: null }]);
    expect(same.difference.causes).toEqual([]);
    expect(Number(same.figures[same.costMoved].value)).toBe(0);
    await test.setPrice('2026-03-10', 8);
    // The bill has changed too, but what was promised is costed as it was.
    await test.database.labourGrade.updateMany({ data: { payPerHour: 33 } });
    test.setTime('2026-03-11');
    const moved = await today();
    const causes: {
      cause: string;
      effect: { cost: string };
      changes: { was: { value: string }; now: { value: string }; effect: { cost: string } }[];
    }[] = moved.difference.causes;
    expect(causes.map(({ cause, changes }) => [cause, changes[0]?.was.value, changes[0]?.now.value])).toEqual(
      [
        ['price', '6.4', '8'],
        ['rate', '30', '33'],
      ],
    );
    const value = (id: string) => Number(moved.figures[id].value);
    expect(value(moved.costMoved)).toBeGreaterThan(0);
    // The causes, and what rounding each leaves, are the whole of what moved.
    const causesTogether = causes.reduce((all, { effect }) => all + value(effect.cost), 0);
    expect(causesTogether + value(moved.difference.rounding.cost)).toBeCloseTo(value(moved.costMoved), 2);
    expect(value(moved.now.cost) - value(moved.whenSent.cost)).toBeCloseTo(value(moved.costMoved), 6);
    expect(value(moved.now.margin)).toBeLessThan(value(moved.whenSent.margin));
    expect(await test.database.quoteRevision.findUniqueOrThrow({ where: { id: sent.id } })).toEqual(before);
    await test.database.labourGrade.updateMany({ data: { payPerHour: 30 } });
  });

  it('says why a line cannot be costed any more', async () => {
    const sent = await sendQuote(test, 'No price left');
    await test.database.labourGrade.updateMany({ data: { code: 'gone' } });
    const { body } = await get(`/api/quote-revisions/${sent.id}/today`).expect(200);
    expect(body.lines[0].costNow).toBeNull();
    expect(body.lines[0].problem).toContain('owner');
    expect(Number(body.figures[body.costMoved].value)).toBe(0);
    await test.database.labourGrade.updateMany({ data: { code: 'owner' } });
  });

  it('is for what was sent', async () => {
    const begun = { title: 'Draft', clientId: test.clientId, enquiryId: null };
    const { body } = await postAs(test, '/api/quotes', begun).expect(201);
    await get(`/api/quote-revisions/${body.currentRevisionId}/today`).expect(409);
  });
});
