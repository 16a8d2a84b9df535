import { createHash } from 'node:crypto';
import { canonicalText } from '@scantling/quoting';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { quoteCalls } from '../../../../../tests/api/quote-calls.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

const { maker, get, post, drafted } = quoteCalls(() => test);

async function sent(title: string, clientId = test.clientId) {
  const { id, version } = await drafted(title, clientId);
  const { body } = await post(`/api/quote-revisions/${id}/send`, {}, version).expect(200);
  return body;
}

describe('a draft', () => {
  it('starts with what the workshop’s quotes start with', async () => {
    const { body } = await post('/api/quotes', { title: 'Start', clientId: test.clientId, enquiryId: null });
    expect(body).toMatchObject({ number: null, state: 'draft', currency: 'USD', contract: null, version: 2 });
    const { draft } = (await get(`/api/quote-revisions/${body.currentRevisionId}`)).body;
    expect(draft).toMatchObject({ priceMode: 'exclusive', validDays: 30, terms: 'Wood moves.' });
    expect(draft.schedule.map((part: { share: string; due: string }) => [part.share, part.due])).toEqual([
      ['0.5', 'on-acceptance'],
      ['0.5', 'on-delivery'],
    ]);
  });

  it('follows its cost sheet until it is sent, and shows us the margin', async () => {
    const { id } = await drafted('Live');
    const sheet = (await get(`/api/quote-revisions/${id}/lines/shelves/figures`).expect(200)).body;
    const { body } = await get(`/api/quote-revisions/${id}/figures?working=true`).expect(200);
    const value = (figure: string) => Number(body.figures[figure].value);
    const price = Number(sheet.figures[sheet.columns[0].price.netPrice].value);
    const cost = Number(sheet.figures[sheet.columns[0].classes.costOfProduction].value);
    expect(sheet.columns[0].quantity).toBe(3);
    expect(body.isFrozen).toBe(false);
    expect(value(body.totals.lines[0].amount)).toBeCloseTo(price, 6);
    expect(value(body.totals.net)).toBeCloseTo(price + 30 + 50, 6);
    expect(value(body.margin.cost)).toBeCloseTo(cost + 9, 6);
    expect(body.margin.linesWithoutCost).toEqual(['van']);
    expect(value(body.margin.profit)).toBeCloseTo(price + 80 - cost - 9, 6);
    const chosen = await get(`/api/quote-revisions/${id}/figures?chosen=lamp,paint`).expect(200);
    expect(Number(chosen.body.figures[chosen.body.totals.net].value)).toBeCloseTo(price + 75 + 50 + 90, 6);
    const wrong = await get(`/api/quote-revisions/${id}/figures?chosen=shelves`).expect(422);
    expect(wrong.body.errors[0].field).toBe('chosen.0');
  });

  it('names a deposit that does not pay for what must be bought', async () => {
    const { id, version, draft, title, clientId } = await drafted('Deposit');
    const short = [
      { id: 'a', label: 'Deposit', share: '0.01', due: 'on-acceptance' },
      { id: 'b', label: 'Rest', share: '0.99', due: 'on-delivery' },
    ];
    expect((await get(`/api/quote-revisions/${id}/figures`)).body.margin.isDepositShort).toBe(false);
    const body = { title, clientId, enquiryId: null, draft: { ...draft, schedule: short } };
    await test.request.put(`/api/quote-revisions/${id}`).set(maker(version)).send(body).expect(200);
    const { margin, figures } = (await get(`/api/quote-revisions/${id}/figures`)).body;
    expect(margin.isDepositShort).toBe(true);
    expect(Number(figures[margin.depositWithoutTax].value)).toBeLessThan(
      Number(figures[margin.bought].value),
    );
  });

  it('is changed at the version that was read, and refuses what cannot be', async () => {
    const { id, version, draft, title, clientId } = await drafted('Edit');
    const put = (body: object, etag: number) =>
      test.request.put(`/api/quote-revisions/${id}`).set(maker(etag)).send(body);
    const body = { title, clientId, enquiryId: null, draft };
    await put(body, version - 1).expect(412);
    const [line] = draft.lines;
    const wrong = {
      ...draft,
      lines: [
        { ...line, costSheetId: 'none' },
        { ...draft.lines[1], tax: 'gone' },
      ],
    };
    const refused = await put({ ...body, clientId: 'nobody', draft: wrong }, version).expect(422);
    expect(refused.body.errors.map(({ field }: { field: string }) => field).sort()).toEqual([
      'clientId',
      'draft.lines.0.costSheetId',
      'draft.lines.1.tax',
    ]);
    const unpicture = { ...draft, pictures: [{ sha256: 'a'.repeat(64), alternativeText: 'x' }] };
    const noPicture = await put({ ...body, draft: unpicture }, version).expect(422);
    expect(noPicture.body.errors[0].field).toBe('draft.pictures.0');
    await test.request.delete(`/api/quote-revisions/${id}`).set(maker(version)).expect(204);
    await get(`/api/quote-revisions/${id}`).expect(404);
    expect(await test.database.quote.count({ where: { title: 'Edit' } })).toBe(0);
  });

  it('is made by makers and read by everybody who is known', async () => {
    const body = { title: 'Roles', clientId: test.clientId, enquiryId: null };
    for (const role of ['bookkeeper', 'read-only'] as const)
      await test.request.post('/api/quotes').set(test.as(role)).send(body).expect(403);
    await test.request.get('/api/quotes').expect(401);
    const { id, version } = await drafted('Roles');
    await test.request
      .post(`/api/quote-revisions/${id}/send`)
      .set({ ...test.as('bookkeeper'), 'if-match': `"${version}"` })
      .expect(403);
  });
});

describe('sending', () => {
  it('freezes number, document, hash, figures and paper, and mails the client', async () => {
    const first = await sent('Frozen');
    expect(first).toMatchObject({ state: 'sent', validUntil: '2026-04-01', mailTo: 'greta@client.example' });
    expect(first.number).toMatch(/^Q-2026-\d{4}$/);
    expect(first.linkPath).toMatch(/^\/offers\/[\w-]{43}$/);
    expect(first.documentHash).toBe(createHash('sha256').update(canonicalText(first.document)).digest('hex'));
    expect(first.document).toMatchObject({
      number: first.number,
      sentOn: '2026-03-02',
      workshop: { name: 'Invented Joinery' },
      client: { name: 'Greta (invented)', addressLines: ['4 Mill Lane', 'Inventedtown'] },
    });
    const paper = await test.database.storedDocument.findUniqueOrThrow({ where: { id: first.paperId } });
    expect(Buffer.from(paper.bytes).subarray(0, 5).toString()).toBe('%PDF-');
    const mail = await test.database.outboxMail.findUniqueOrThrow({
      where: { event: `quote-sent:${first.id}` },
      include: { attachments: true },
    });
    expect(mail.text).toContain(first.linkPath);
    expect(mail.attachments.map(({ documentId }) => documentId)).toEqual([first.paperId]);
    const row = await test.database.quoteRevision.findUniqueOrThrow({ where: { id: first.id } });
    const token = first.linkPath.slice('/offers/'.length);
    expect(row.tokenHash).toBe(createHash('sha256').update(token).digest('hex'));
    expect(canonicalText(row)).not.toContain(token);
  });

  it('changes nothing when it is repeated, also at once', async () => {
    const { id, version } = await drafted('Twice', test.quietClientId);
    const both = await Promise.all([1, 2].map(() => post(`/api/quote-revisions/${id}/send`, {}, version)));
    expect(both.map(({ status }) => status)).toEqual([200, 200]);
    expect(both.filter(({ body }) => body.linkPath !== null)).toHaveLength(1);
    const before = await test.database.quoteRevision.findUniqueOrThrow({ where: { id } });
    const again = await post(`/api/quote-revisions/${id}/send`, {}, version).expect(200);
    expect(again.body).toMatchObject({ linkPath: null, mailTo: null, number: before.number });
    expect(await test.database.quoteRevision.findUniqueOrThrow({ where: { id } })).toEqual(before);
  });

  it('gives numbers without holes: one that fails takes none', async () => {
    const numbers = async () =>
      (await test.database.issuedNumber.findMany({ where: { series: 'quote' } })).map(({ count }) => count);
    const { id, version, draft, title, clientId } = await drafted('Hole');
    const half = [{ id: 'a', label: 'Half', share: '0.5', due: 'on-acceptance' }];
    const body = { title, clientId, enquiryId: null, draft: { ...draft, schedule: half } };
    const { body: saved } = await test.request
      .put(`/api/quote-revisions/${id}`)
      .set(maker(version))
      .send(body);
    const refused = await post(`/api/quote-revisions/${id}/send`, {}, saved.version).expect(422);
    expect(refused.body.errors[0].field).toBe('schedule');
    await Promise.all([sent('One'), sent('Two'), sent('Three')]);
    const given = (await numbers()).sort((a, b) => a - b);
    expect(given).toEqual(given.map((_, at) => at + 1));
  });

  it('cannot be undone by anybody: the database refuses changes and removal', async () => {
    const { id, quoteId } = await sent('Kept');
    const { quoteRevision, quote } = test.database;
    const refused = /never changed|never removed/;
    for (const data of [
      { documentHash: 'x' },
      { document: {} },
      { working: {} },
      { draft: {} },
      { number: 'Q-1' },
      { validUntil: new Date() },
      { sentAt: null },
      { paperId: null },
      { state: 'draft' },
    ])
      await expect(quoteRevision.update({ where: { id }, data }), Object.keys(data).join()).rejects.toThrow(
        refused,
      );
    await expect(quoteRevision.delete({ where: { id } })).rejects.toThrow(refused);
    await expect(quote.delete({ where: { id: quoteId } })).rejects.toThrow(refused);
    await post(`/api/quote-revisions/${id}/send`, {}, 1).expect(200);
    const { body } = await test.request
      .put(`/api/quote-revisions/${id}`)
      .set(maker((await get(`/api/quote-revisions/${id}`)).body.version))
      .send(await editOf(id))
      .expect(409);
    expect(body).toMatchObject({ code: 'quote-state' });
    expect(body.detail).toContain('make a revision');
  });
});

async function editOf(id: string) {
  const { title, clientId, draft } = (await get(`/api/quote-revisions/${id}`)).body;
  return { title, clientId, enquiryId: null, draft };
}

describe('the list of quotes', () => {
  it('goes by state as of today, client and text, page by page', async () => {
    const one = await sent('Listed elm', test.quietClientId);
    const list = async (query: string) =>
      (await get(`/api/quotes?${query}`).expect(200)).body.items.map(({ title }: { title: string }) => title);
    expect(await list('state=sent&text=listed')).toEqual(['Listed elm']);
    expect(await list(`text=${one.number}`)).toEqual(['Listed elm']);
    expect(await list('text=otto')).toContain('Listed elm');
    expect(await list(`clientId=${test.clientId}&text=elm`)).toEqual([]);
    test.setTime('2026-04-01');
    expect(await list('state=sent&text=listed')).toEqual(['Listed elm']);
    test.setTime('2026-04-02');
    expect(await list('state=sent&text=listed')).toEqual([]);
    expect(await list('state=expired&text=listed')).toEqual(['Listed elm']);
    test.setTime('2026-03-02');
    const first = (await get('/api/quotes?limit=2')).body;
    const second = (await get(`/api/quotes?limit=2&cursor=${first.next}`)).body;
    const ids = [...first.items, ...second.items].map(({ id }: { id: string }) => id);
    expect(new Set(ids).size).toBe(4);
    expect([...ids].sort().reverse()).toEqual(ids);
  });
});
