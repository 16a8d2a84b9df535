import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { acceptedQuote } from '../../../../../tests/api/accepted-quotes.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { postAs, sendQuote } from '../../../../../tests/api/sent-quotes.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterEach(() => test.setTime('2026-03-02'));
afterAll(() => test.close());

const accepted = (title: string) => acceptedQuote(test, title);
const post = (path: string, body: object, key?: string) =>
  test.request
    .post(path)
    .set({ ...test.as('bookkeeper'), ...(key === undefined ? {} : { 'idempotency-key': key }) })
    .send(body);
const get = (path: string) => test.request.get(path).set(test.as('read-only'));
const issue = (quoteId: string, wanted: object, key?: string) =>
  post(`/api/quotes/${quoteId}/invoices`, { wanted }, key);
const half = { kind: 'part', of: { kind: 'share', share: '0.5' } };
const cents = (value: string | number) => Math.round(Number(value) * 100);

async function statement(quoteId: string) {
  const { body } = await get(`/api/statements?quoteId=${quoteId}`).expect(200);
  const [one] = body.statements;
  const value = (name: string) => cents(body.figures[one[name]].value);
  return { one, value };
}

describe('invoices of an accepted quote', () => {
  it('come to the contract to the cent, deposit, part and final together', async () => {
    const { quoteId, revisionId, total } = await accepted('Whole way');
    const wanted = { kind: 'deposit', revisionId, partId: 'deposit' };
    const preview = await post(`/api/quotes/${quoteId}/invoice-preview`, wanted).expect(200);
    expect(preview.body.document).toMatchObject({ number: '', kind: 'deposit' });
    expect(await test.database.invoice.count({ where: { quoteId } })).toBe(0);
    const { body: deposit } = await issue(quoteId, wanted).expect(201);
    expect(deposit.document.total).toBe(preview.body.document.total);
    expect(cents(deposit.total)).toBe(Math.round(total * 30));
    const twice = await issue(quoteId, wanted).expect(422);
    expect(twice.body.errors[0].field).toBe('partId');
    const { body: part } = await issue(quoteId, { kind: 'part', of: { kind: 'amount', amount: '33.33' } });
    const { body: final } = await issue(quoteId, { kind: 'final', suppliedOn: '2026-03-01' }).expect(201);
    const all = [deposit, part, final].map((one) => one.document);
    const sum = (name: 'total' | 'tax' | 'net') => all.reduce((so, one) => so + cents(one[name]), 0);
    const { contract, deducted } = final.document;
    expect([sum('total'), sum('tax'), sum('net')]).toEqual(
      [contract.total, contract.tax, contract.net].map(cents),
    );
    expect(sum('total')).toBe(cents(total));
    expect(deducted.map((one: { number: string }) => one.number)).toEqual([deposit.number, part.number]);
    await issue(quoteId, { kind: 'final' }).expect(422);
    const { value } = await statement(quoteId);
    expect([value('invoiced'), value('leftToInvoice'), value('owed')]).toEqual([
      cents(total),
      0,
      cents(total),
    ]);
  });

  it('cannot together ask for more than was agreed, however many are issued at once', async () => {
    const { quoteId, total } = await accepted('At once');
    const wanted = { kind: 'part', of: { kind: 'share', share: '0.4' } };
    const answers = await Promise.all([1, 2, 3, 4].map(() => issue(quoteId, wanted)));
    expect(answers.map(({ status }) => status).toSorted()).toEqual([201, 201, 422, 422]);
    const { value } = await statement(quoteId);
    expect(value('invoiced')).toBeLessThanOrEqual(cents(total));
    const numbers = await test.database.issuedNumber.findMany({
      where: { series: 'invoice', year: 2026 },
      orderBy: { count: 'asc' },
    });
    expect(numbers.map(({ count }) => count)).toEqual(numbers.map((_, at) => at + 1));
    expect(await test.database.invoice.count({ where: { kind: { not: 'credit-note' } } })).toBe(
      numbers.length,
    );
  });

  it('are issued once for one key, with one mail and the stored bytes', async () => {
    const { quoteId } = await accepted('Once');
    const first = await issue(quoteId, half, 'invoice-once').expect(201);
    const again = await issue(quoteId, half, 'invoice-once').expect(201);
    expect(again.body).toEqual(first.body);
    expect(await test.database.invoice.count({ where: { quoteId } })).toBe(1);
    const mails = await test.database.outboxMail.findMany({ where: { aboutId: first.body.id } });
    expect(mails.map(({ toAddress }) => toAddress)).toEqual(['greta@client.example']);
    const paper = await test.request
      .get(`/api/documents/${first.body.paperId}`)
      .set(test.as('bookkeeper'))
      .expect(200);
    expect(paper.headers['content-type']).toContain('application/pdf');
    expect(paper.body.subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('stay as they were issued', async () => {
    const { quoteId } = await accepted('Frozen');
    const { body } = await issue(quoteId, half).expect(201);
    const { id } = body;
    const { invoice } = test.database;
    await expect(invoice.update({ where: { id }, data: { total: '1' } })).rejects.toThrow('never changed');
    await expect(invoice.delete({ where: { id } })).rejects.toThrow('never removed');
    await post(`/api/invoices/${id}/credit-notes`, { amount: '10', reason: 'A scratch' }).expect(201);
    const after = await get(`/api/invoices/${id}`).expect(200);
    expect([after.body.document, after.body.documentHash]).toEqual([body.document, body.documentHash]);
  });

  it('keep how they were worked out, as it was looked at before', async () => {
    const { quoteId } = await accepted('Worked out');
    const preview = await post(`/api/quotes/${quoteId}/invoice-preview`, half).expect(200);
    const { body: issued } = await issue(quoteId, half).expect(201);
    const { own, left, whole, figures } = issued.working;
    expect([own, left, figures]).toEqual([preview.body.own, preview.body.left, preview.body.figures]);
    expect(figures[own.total].value).toBe(issued.total);
    expect(figures[own.taxes[0].tax].how).toBeDefined();
    expect(figures[whole.total].value).toBe(preview.body.figures[preview.body.contract.total].value);
    const credit = { amount: '10', reason: 'A scratch' };
    const { body: note } = await post(`/api/invoices/${issued.id}/credit-notes`, credit).expect(201);
    const { working } = note;
    expect(working.figures[working.whole.total].value).toBe(issued.total);
    expect(working.figures[working.own.total].value).toBe('10');
    const again = await get(`/api/invoices/${issued.id}`).expect(200);
    expect(again.body.working).toEqual(issued.working);
  });

  it('wait for acceptance, and for those who keep the money', async () => {
    const { quoteId } = await sendQuote(test, 'Not yet');
    expect((await issue(quoteId, half).expect(409)).body.code).toBe('quote-state');
    const body = { wanted: half };
    await postAs(test, `/api/quotes/${quoteId}/invoices`, body).expect(403);
    await test.request
      .post(`/api/quotes/${quoteId}/invoices`)
      .set(test.as('read-only'))
      .send(body)
      .expect(403);
    await get('/api/invoices').expect(200);
    await get('/api/invoices/none').expect(404);
  });
});

describe('a credit note', () => {
  it('takes back no more than is left, and frees what it took for another invoice', async () => {
    const { quoteId, total } = await accepted('Credited');
    const { body: final } = await issue(quoteId, { kind: 'final' }).expect(201);
    const credit = (amount: string | null) =>
      post(`/api/invoices/${final.id}/credit-notes`, { amount, reason: 'Agreed' });
    const { body: first } = await credit('50.01').expect(201);
    expect(first).toMatchObject({ kind: 'credit-note', state: null, creditsId: final.id });
    expect(first.number).not.toBe(final.number);
    const tooMuch = await credit(String(total)).expect(422);
    expect(tooMuch.body.errors[0].field).toBe('amount');
    const { body: rest } = await credit(null).expect(201);
    const sum = (name: 'net' | 'tax' | 'total') => cents(first.document[name]) + cents(rest.document[name]);
    const names = ['net', 'tax', 'total'] as const;
    expect(names.map(sum)).toEqual(names.map((name) => cents(final.document[name])));
    expect((await get(`/api/invoices/${final.id}`)).body.state).toBe('credited');
    await credit('0.01').expect(422);
    await post(`/api/invoices/${rest.id}/credit-notes`, { amount: null, reason: 'x' }).expect(422);
    expect((await issue(quoteId, { kind: 'final' }).expect(201)).body.total).toBe(final.total);
  });
});

describe('payments', () => {
  it('come in parts, are reversed by an entry of their own, and name what is too much', async () => {
    const { quoteId } = await accepted('Paid');
    const { body: invoice } = await issue(quoteId, half).expect(201);
    const pay = (amount: string) =>
      post(`/api/invoices/${invoice.id}/payments`, { amount, receivedOn: '2026-03-02', method: 'cash' });
    await pay('0').expect(422);
    const { body: part } = await pay('10').expect(201);
    expect(part).toMatchObject({ state: 'part-paid', paid: '10' });
    expect(part.payments[0].receiptNumber).toMatch(/2026/);
    const { body: full } = await pay(invoice.total).expect(201);
    expect(full.state).toBe('paid');
    expect(full.figures[full.balance.overpaid].value).toBe('10');
    const path = `/api/payments/${part.payments[0].id}/reversal`;
    const both = await Promise.all([post(path, { reason: 'Bounced' }), post(path, { reason: 'Bounced' })]);
    expect(both.map(({ status }) => status).toSorted()).toEqual([201, 409]);
    const { body: after } = await get(`/api/invoices/${invoice.id}`);
    expect(after.payments.map((one: { amount: string }) => one.amount)).toEqual(['10', invoice.total, '-10']);
    expect(after.figures[after.balance.owed].value).toBe('0');
    await expect(test.database.payment.deleteMany({ where: { invoiceId: invoice.id } })).rejects.toThrow(
      'never removed',
    );
  });
});

describe('what is overdue', () => {
  it('is listed with a text to send, and reminded of once a day', async () => {
    const { quoteId } = await accepted('Late');
    const { body: invoice } = await issue(quoteId, { ...half, dueOn: '2026-03-05' }).expect(201);
    await post(`/api/invoices/${invoice.id}/reminders`, {}).expect(409);
    test.setTime('2026-03-15');
    const { body } = await get('/api/overdue-invoices?limit=200').expect(200);
    const own = body.items.find((one: { invoice: { id: string } }) => one.invoice.id === invoice.id);
    expect(own).toMatchObject({ invoice: { state: 'overdue', daysOverdue: 10 }, remindersSent: 0 });
    expect(own.text).toContain(invoice.number);
    for (const _ of [1, 2]) await post(`/api/invoices/${invoice.id}/reminders`, {}).expect(201);
    const mails = await test.database.outboxMail.count({
      where: { event: { startsWith: `invoice-reminder:${invoice.id}` } },
    });
    expect(mails).toBe(1);
    const listed = await get(`/api/invoices?state=overdue&quoteId=${quoteId}`).expect(200);
    expect(listed.body.items).toHaveLength(1);
    for (const state of ['open', 'part-paid', 'paid', 'credited'])
      expect((await get(`/api/invoices?state=${state}&quoteId=${quoteId}`)).body.items).toEqual([]);
  });
});
