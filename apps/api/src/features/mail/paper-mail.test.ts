import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { acceptedQuote } from '../../../../../tests/api/accepted-quotes.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { postAs } from '../../../../../tests/api/sent-quotes.ts';

let test: QuotingWorkshop;
let papers: { invoice: string; receipt: string; delivery: string; quote: string };

const get = (path: string, role: 'maker' | 'read-only' = 'maker') =>
  test.request.get(`/api/${path}`).set(test.as(role));
const book = (path: string, body: object) =>
  test.request.post(`/api/${path}`).set(test.as('bookkeeper')).send(body);

beforeAll(async () => {
  test = await startQuotingWorkshop();
  const { quoteId, revisionId } = await acceptedQuote(test, 'Mailed again');
  const wanted = { kind: 'part', of: { kind: 'amount', amount: '100' } };
  const { body: invoice } = await book(`quotes/${quoteId}/invoices`, { wanted, sendMail: false });
  const money = { amount: '100', receivedOn: '2026-03-02', method: 'cash' };
  const { body: paid } = await book(`invoices/${invoice.id}/payments`, money);
  const { body: note } = await postAs(test, `/api/quotes/${quoteId}/delivery-notes`, {
    deliveredOn: '2026-03-02',
    lines: [{ revisionId, lineId: 'shelves', quantity: '1' }],
  });
  const { paperId } = await test.database.quoteRevision.findUniqueOrThrow({ where: { id: revisionId } });
  papers = {
    invoice: invoice.paperId,
    receipt: paid.payments[0].receiptPaperId,
    delivery: note.paperId,
    quote: paperId ?? '',
  };
});
afterAll(() => test.close());

describe('a stored paper', () => {
  it.each([
    ['invoice', /^Part invoice INV-.*: Mailed again$/, /Nothing is owed/],
    ['receipt', /^Receipt .*: Mailed again$/, /\$100\.00, received on 2026-03-02/],
    ['delivery', /^Delivery note .*: Mailed again$/, /handed over on 2026-03-02/],
  ] as const)('of an issued %s has its mail proposed', async (kind, subject, text) => {
    const { body } = await get(`documents/${papers[kind]}/mail`).expect(200);
    expect(body.to.address).toBe('greta@client.example');
    expect(body.subject).toMatch(subject);
    expect(body.text).toMatch(text);
    expect(body.mails).toEqual([]);
  });

  it('is mailed as often as wanted, each time a mail of its own with the bytes as issued', async () => {
    const path = `/api/documents/${papers.delivery}/mails`;
    const body = {
      to: { name: 'Greta', address: 'greta.l@client.example' },
      subject: 'Again',
      text: 'Here.',
    };
    const send = (key: string) => postAs(test, path, body).set('idempotency-key', key).expect(201);
    const [first, same, second] = [await send('one'), await send('one'), await send('two')];
    expect(same.body.id).toBe(first.body.id);
    expect(first.body).toMatchObject({ state: 'waiting', to: body.to, about: { kind: 'delivery-note' } });
    expect(first.body.attachments.map((one: { documentId: string }) => one.documentId)).toEqual([
      papers.delivery,
    ]);
    const { body: after } = await get(`documents/${papers.delivery}/mail`).expect(200);
    expect(after.mails.map(({ id }: { id: string }) => id)).toEqual([second.body.id, first.body.id]);
  });

  it('of an invoice keeps what is sent of it with the invoice', async () => {
    const body = { to: { name: '', address: 'x@y.example' }, subject: 'Invoice', text: 'Here.' };
    const { body: mail } = await postAs(test, `/api/documents/${papers.invoice}/mails`, body).expect(201);
    expect(mail.about.kind).toBe('invoice');
    const wrong = { ...body, to: { name: '', address: 'nobody' } };
    const refused = await postAs(test, `/api/documents/${papers.invoice}/mails`, wrong).expect(422);
    expect(refused.body.errors[0].field).toBe('to.address');
  });

  it('of a quote is not mailed so, since its mail holds the link; and readers mail nothing', async () => {
    await get(`documents/${papers.quote}/mail`).expect(404);
    await get('documents/0193f6a0-0000-7000-8000-000000000009/mail').expect(404);
    await get(`documents/${papers.invoice}/mail`, 'read-only').expect(403);
    const body = { to: { name: '', address: 'x@y.example' }, subject: 'a', text: 'b' };
    await postAs(test, `/api/documents/${papers.quote}/mails`, body).expect(404);
  });
});
