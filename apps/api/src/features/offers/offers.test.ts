import { createHash } from 'node:crypto';
import { canonicalText } from '@scantling/quoting';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { postAs, type SentQuote, sendQuote } from '../../../../../tests/api/sent-quotes.ts';
import { withoutSecrets } from '../../plugins/request-log.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterEach(() => test.setTime('2026-03-02'));
afterAll(() => test.close());

// A client has no account: none of these requests is signed in.
const read = (link: string) => test.request.get(link);
const accept = ({ link, hash }: SentQuote, name: string, chosen: string[] = []) =>
  test.request.post(`${link}/accept`).send({ name, chosen, documentHash: hash });
const decline = ({ link }: SentQuote, reason = '') => test.request.post(`${link}/decline`).send({ reason });

describe('a client’s link', () => {
  it('shows the offer and nothing of ours, without signing in', async () => {
    const offer = await sendQuote(test, 'Open');
    const { body } = await read(offer.link).expect(200);
    expect(body).toMatchObject({
      state: 'open',
      documentHash: offer.hash,
      acceptance: null,
      decline: null,
      contact: { name: 'Invented Joinery', email: 'shop@joinery.example', phone: '+1 555 0100' },
    });
    expect(canonicalText(body)).not.toMatch(/cost(?!-sheet")|margin|working|Ash shelves at/i);
    expect(canonicalText(body)).not.toContain(test.costSheetId);
    const paper = await read(`${offer.link}/paper`).buffer().expect(200);
    expect(paper.headers['content-type']).toBe('application/pdf');
    const { paperId } = await test.database.quoteRevision.findUniqueOrThrow({ where: { id: offer.id } });
    const kept = await test.database.storedDocument.findUniqueOrThrow({ where: { id: paperId ?? '' } });
    expect(Buffer.compare(paper.body, Buffer.from(kept.bytes))).toBe(0);
    await read(`${offer.link}/pictures/${'a'.repeat(64)}`).expect(404);
  });

  it('keeps name, time, choices and the hash of what was accepted', async () => {
    const offer = await sendQuote(test, 'Accepted');
    test.setTime('2026-03-05T08:15:00.000Z');
    const { body } = await accept(offer, 'Greta L.', ['paint', 'lamp']).expect(200);
    const { document } = (await read(offer.link)).body;
    expect(body).toMatchObject({
      state: 'accepted',
      acceptance: { name: 'Greta L.', acceptedAt: '2026-03-05T08:15:00.000Z', chosen: ['lamp', 'paint'] },
    });
    const { chosen, totals, acceptedHash } = body.acceptance;
    const whole = canonicalText({ document, chosen, totals });
    expect(acceptedHash).toBe(createHash('sha256').update(whole).digest('hex'));
    // 3 painted instead of oiled at 15 more, and the lamp: 45 + 90, and 20 % tax.
    expect(Number(totals.total) - Number(document.totals.total)).toBeCloseTo(135 * 1.2, 6);
    const told = await test.database.outboxMail.findUniqueOrThrow({
      where: { event: `quote-accepted:${offer.id}` },
    });
    expect(told.toAddress).toBe('shop@joinery.example');
    await accept(offer, 'Greta L.', ['lamp', 'paint']).expect(200);
    const other = await accept(offer, 'Somebody else').expect(409);
    expect(other.body).toMatchObject({ code: 'offer-closed' });
    expect(other.body.detail).toContain('accepted already');
    await decline(offer).expect(409);
  });

  it('gives one acceptance where two accept at once', async () => {
    const offer = await sendQuote(test, 'At once');
    const names = Array.from({ length: 8 }, (_, at) => `Person ${at}`);
    const answers = await Promise.all(names.map((name) => accept(offer, name).then((answer) => answer)));
    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([200, 409, 409, 409, 409, 409, 409, 409]);
    const winner = answers.find(({ status }) => status === 200);
    const { body } = await read(offer.link);
    expect(body.acceptance).toEqual(winner?.body.acceptance);
    expect(await test.database.outboxMail.count({ where: { event: `quote-accepted:${offer.id}` } })).toBe(1);
  });

  it('accepts what was read, chosen as it can be', async () => {
    const offer = await sendQuote(test, 'Wrong');
    const wrong = await accept({ ...offer, hash: 'b'.repeat(64) }, 'Greta').expect(422);
    expect(wrong.body.errors[0].field).toBe('documentHash');
    const both = await accept(offer, 'Greta', ['oil', 'paint']).expect(422);
    expect(both.body.errors[0]).toMatchObject({ field: 'chosen.1' });
    expect((await accept(offer, ' ').expect(422)).body.errors[0].field).toBe('name');
    expect((await read(offer.link)).body.state).toBe('open');
  });

  it('takes a no, with the reason', async () => {
    const offer = await sendQuote(test, 'Declined');
    const { body } = await decline(offer, 'We move later.').expect(200);
    expect(body).toMatchObject({ state: 'declined', decline: { reason: 'We move later.' } });
    await accept(offer, 'Greta').expect(409);
  });

  it('says kindly that it has expired, the day after its last', async () => {
    const offer = await sendQuote(test, 'Late', { validDays: 10 });
    test.setTime('2026-03-12T23:59:00.000Z');
    expect((await read(offer.link)).body.state).toBe('open');
    test.setTime('2026-03-13T00:00:00.000Z');
    const { body } = await read(offer.link).expect(200);
    expect(body).toMatchObject({ state: 'expired', document: { validUntil: '2026-03-12' } });
    const refused = await accept(offer, 'Greta').expect(409);
    expect(refused.body.detail).toContain('Please ask Invented Joinery (shop@joinery.example, +1 555 0100).');
    expect((await read(offer.link)).body.acceptance).toBeNull();
  });

  it('stops when it is withdrawn or renewed', async () => {
    const offer = await sendQuote(test, 'Withdrawn');
    const { body } = await postAs(test, `/api/quote-revisions/${offer.id}/link`).expect(200);
    await read(offer.link).expect(404);
    const renewed = { ...offer, link: `/api${body.linkPath}` };
    expect((await read(renewed.link)).body.state).toBe('open');
    await postAs(test, `/api/quote-revisions/${offer.id}/withdraw`, undefined, offer.version + 1).expect(200);
    expect((await read(renewed.link)).body).toMatchObject({ state: 'withdrawn', document: null });
    await read(`${renewed.link}/paper`).expect(404);
    await accept(renewed, 'Greta').expect(409);
  });
});

describe('guessing links', () => {
  it('finds nothing, and is stopped after some tries', async () => {
    const own = await startQuotingWorkshop();
    try {
      const guess = (at: number) => own.request.get(`/api/offers/${String(at).padStart(43, 'g')}`);
      await own.request.get('/api/offers/short').expect(422);
      const statuses: number[] = [];
      for (let at = 0; at < 31; at += 1) statuses.push((await guess(at)).status);
      expect(statuses.slice(0, 30).every((status) => status === 404)).toBe(true);
      const stopped = await guess(31);
      expect([statuses[30], stopped.status]).toEqual([429, 429]);
      expect(Number(stopped.headers['retry-after'])).toBeGreaterThan(0);
    } finally {
      await own.close();
    }
  });
});

describe('the log', () => {
  it('does not keep the secret of a link', () => {
    const secret = 'x'.repeat(43);
    const written = [`/api/offers/${secret}`, `/api/offers/${secret}/accept`, `/offers/${secret}?a=1`];
    expect(written.map(withoutSecrets)).toEqual([
      '/api/offers/[redacted]',
      '/api/offers/[redacted]/accept',
      '/offers/[redacted]?a=1',
    ]);
  });
});
