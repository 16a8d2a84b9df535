import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { headerOf, type MailServer, startMailServer } from '../../../../tests/api/mail-server.ts';
import { createTestDatabase, type TestDatabase } from '../../../../tests/api/test-database.ts';
import { readConfig } from '../config.ts';
import { storeDocument } from '../documents/store-document.ts';
import { startMailSender } from './mail-sender.ts';
import { type MailGiven, queueMail } from './queue-mail.ts';

let test: TestDatabase;
let server: MailServer;
const endings: (() => Promise<unknown>)[] = [];

beforeAll(async () => {
  test = await createTestDatabase();
  const settings = { letterhead: { email: 'bench@workshop.example' } };
  await test.database.workshop.create({ data: { name: 'Invented joinery', currency: 'EUR', settings } });
});
afterAll(() => test.drop());
beforeEach(async () => {
  server = await startMailServer();
});
afterEach(async () => {
  for (const end of endings.splice(0).reverse()) await end();
  await server.close();
  await test.database.outboxMail.deleteMany();
});

const MAIL_FROM = 'Invented joinery <office@workshop.example>';
let count = 0;
async function queue(changed: Partial<MailGiven> = {}): Promise<string> {
  count += 1;
  const { id } = await queueMail(test.database, {
    event: `test:${count}`,
    to: { name: 'Greta Lindqvist', address: 'greta@client.example' },
    subject: `Mail ${count}`,
    text: 'Dear Greta,\nhere is your quote.',
    about: { kind: 'quote', id: 'x' },
    ...changed,
  });
  return id;
}

function startSender(url = server.url): void {
  const { smtp } = readConfig({ SMTP_URL: url, MAIL_FROM });
  if (smtp === undefined) throw new Error('SMTP_URL is set');
  endings.push(startMailSender(test.database, smtp, { lookEveryMs: 20 }));
}

const mailOf = (id: string) => test.database.outboxMail.findUniqueOrThrow({ where: { id } });
const until = (check: () => Promise<void> | void) => vi.waitFor(check, { timeout: 20_000, interval: 25 });
const untilState = async (id: string, state: string) => {
  await until(async () => expect((await mailOf(id)).state).toBe(state));
  return mailOf(id);
};
const untilTried = async (id: string, attempts: number) => {
  await until(async () => expect(await mailOf(id)).toMatchObject({ attempts, claim: null }));
  return mailOf(id);
};
const dueNow = (id: string) =>
  test.database.outboxMail.update({ where: { id }, data: { nextAttemptAt: new Date(0) } });

describe('a mail in the outbox', () => {
  it('arrives whole, with its attachments', async () => {
    const bytes = Buffer.from('%PDF-1.7 an invented quote');
    const stored = await storeDocument(test.database, {
      kind: 'quote',
      fileName: 'Angebot für Greta.pdf',
      mediaType: 'application/pdf',
      bytes,
    });
    const text = 'Grüße aus der Werkstatt — 12 € per m²\n.\n.. a line that begins with dots';
    const id = await queue({ subject: 'Angebot über 1 Bank', text, attachments: [stored.id] });
    startSender();
    const sent = await untilState(id, 'sent');
    expect(sent).toMatchObject({ attempts: 1, lastError: null, sentFrom: 'office@workshop.example' });
    expect(sent.serverReply).toMatch(/^250 /);
    const [mail] = server.received;
    expect(mail).toMatchObject({ from: 'office@workshop.example', to: ['greta@client.example'] });
    const raw = mail?.raw ?? '';
    expect(headerOf(raw, 'from')).toBe('Invented joinery <office@workshop.example>');
    expect(headerOf(raw, 'to')).toBe('Greta Lindqvist <greta@client.example>');
    expect(headerOf(raw, 'reply-to')).toBe('bench@workshop.example');
    expect(headerOf(raw, 'message-id')).toBe(sent.messageId);
    expect(sent.messageId).toMatch(/^<[0-9a-f-]{36}@workshop\.example>$/);
    // RFC 2047: a subject beyond ASCII is encoded.
    expect(headerOf(raw, 'subject')).toMatch(/^=\?UTF-8\?/i);
    expect(raw).toContain(bytes.toString('base64'));
    const encoded = Buffer.from(text).toString('base64').slice(0, 60);
    const isReadable = raw.includes('Gr=C3=BC=C3=9Fe') || raw.replaceAll('\r\n', '').includes(encoded);
    expect(isReadable).toBe(true);
  });

  it('leaves after its transaction is kept, and not at all where that is taken back', async () => {
    startSender();
    const taken = test.database.$transaction(async (transaction) => {
      const about = { kind: 'quote', id: 'x' };
      const to = { name: '', address: 'nobody@client.example' };
      await queueMail(transaction, { event: 'taken-back', to, subject: 'Never', text: 'Never', about });
      throw new Error('taken back');
    });
    await expect(taken).rejects.toThrow('taken back');
    await untilState(await queue({ subject: 'After' }), 'sent');
    expect(server.seen).toEqual(['After']);
  });

  it('is one mail however often its event is told', async () => {
    const told = await Promise.all(
      [1, 2, 3, 4].map(() =>
        test.database.$transaction((transaction) =>
          queueMail(transaction, {
            event: 'quote-sent:7',
            to: { name: '', address: 'greta@client.example' },
            subject: 'Once',
            text: 'Once',
            about: { kind: 'quote', id: '7' },
          }),
        ),
      ),
    );
    expect(new Set(told.map(({ id }) => id)).size).toBe(1);
    expect(told.filter(({ isNew }) => isNew).length).toBe(1);
  });

  it('of the demo is never sent', async () => {
    const demo = await queue({ isDemo: true });
    startSender();
    await untilState(await queue(), 'sent');
    expect(await mailOf(demo)).toMatchObject({ state: 'waiting', attempts: 0 });
    expect(server.received.length).toBe(1);
  });
});

describe('a mail server', () => {
  it('that puts a mail off is asked again later, under the same Message-ID', async () => {
    server.answer({ kind: 'refuse', at: 'mail', code: 451, words: 'Try later' });
    const id = await queue();
    startSender();
    const put = await untilTried(id, 1);
    expect(put).toMatchObject({ state: 'waiting' });
    expect(put.lastError).toMatch(/^The mail server put it off: 451 .*Try later/);
    // By the database's clock.
    expect(put.nextAttemptAt.getTime() - put.updatedAt.getTime()).toBe(60_000);
    server.answer({ kind: 'take' });
    await dueNow(id);
    const sent = await untilState(id, 'sent');
    expect(sent).toMatchObject({ attempts: 2, lastError: null, messageId: put.messageId });
    expect(headerOf(server.received[0]?.raw ?? '', 'message-id')).toBe(put.messageId);
  });

  it.each([
    ['address', 550, /refused the address greta@client\.example: 550 .*No such person/],
    ['mail', 554, /refused the mail: 554 .*No such person/],
    ['sender', 553, /refused the sender that MAIL_FROM names: 553/],
  ] as const)('that refuses the %s for good ends the attempts', async (at, code, words) => {
    server.answer({ kind: 'refuse', at, code, words: 'No such person' });
    const id = await queue();
    startSender();
    expect((await untilState(id, 'failed')).lastError).toMatch(words);
    expect(server.received).toEqual([]);
  });

  it('that hangs up in the middle gets the mail again', async () => {
    const id = await queue({ text: 'long '.repeat(8_000) });
    server.answer({ kind: 'hang-up', when: 'early' });
    startSender();
    expect((await untilTried(id, 1)).state).toBe('waiting');
    server.answer({ kind: 'take' });
    await dueNow(id);
    await untilState(id, 'sent');
    expect(server.received.length).toBe(1);
  });

  it('that hangs up before confirming leaves it open whether it arrived, and the mail says so', async () => {
    server.answer({ kind: 'hang-up', when: 'late' });
    const id = await queue();
    startSender();
    const { lastError, state } = await untilTried(id, 1);
    expect([state, lastError]).toEqual(['waiting', expect.stringContaining('It may have arrived')]);
  });

  it('that is not there is named as such, and so is a sign-in that does not hold', async () => {
    const gone = await startMailServer();
    await gone.close();
    const id = await queue();
    startSender(gone.url);
    expect((await untilTried(id, 1)).lastError).toMatch(/^The mail server cannot be reached/);
    for (const end of endings.splice(0)) await end();
    const locked = await startMailServer({ user: 'office', password: 'right' });
    endings.push(locked.close);
    await dueNow(id);
    startSender(locked.url.replace('right', 'wrong'));
    expect((await untilTried(id, 2)).lastError).toMatch(/refused the sign-in; correct user and password/);
    for (const end of endings.splice(1)) await end();
    await dueNow(id);
    startSender(locked.url);
    await untilState(id, 'sent');
  });
});

describe('several programs', () => {
  async function startProcess(): Promise<ChildProcess> {
    const script = fileURLToPath(new URL('../../../../tests/api/mail-sender-process.ts', import.meta.url));
    const child = spawn(process.execPath, ['--import', 'tsx', script], {
      env: { ...process.env, DATABASE_URL: test.url, SMTP_URL: server.url, MAIL_FROM },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    endings.push(async () => child.kill('SIGKILL'));
    await once(child.stdout, 'data');
    return child;
  }

  it('send each mail once', async () => {
    const ids = await Promise.all(Array.from({ length: 40 }, () => queue()));
    startSender();
    startSender();
    await startProcess();
    startSender();
    await until(async () =>
      expect(await test.database.outboxMail.count({ where: { id: { in: ids }, state: 'sent' } })).toBe(40),
    );
    expect(server.received.length).toBe(40);
    expect(new Set(server.seen).size).toBe(40);
  });

  it('take up what a killed one had in hand, once its time is over, and say so', async () => {
    server.answer({ kind: 'silence' });
    const id = await queue();
    const child = await startProcess();
    await until(() => expect(server.seen.length).toBe(1));
    child.kill('SIGKILL');
    await once(child, 'exit');
    server.answer({ kind: 'take' });
    startSender();
    await untilState(await queue({ subject: 'Another' }), 'sent');
    const left = await mailOf(id);
    expect(left).toMatchObject({ state: 'sending', attempts: 1 });
    // Ten minutes pass.
    await test.database.outboxMail.update({ where: { id }, data: { claimedUntil: new Date(0) } });
    expect(await untilState(id, 'sent')).toMatchObject({ attempts: 2, messageId: left.messageId });
    expect(server.received.map(({ raw }) => headerOf(raw, 'message-id'))).toContain(left.messageId);
  });
});
