import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../../../tests/api/test-database.ts';
import { storeDocument } from '../documents/store-document.ts';
import { type MailGiven, queueMail } from './queue-mail.ts';
import { retryDelayS } from './retry-delay.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await createTestDatabase();
  await test.database.workshop.create({
    data: { name: 'Invented joinery', currency: 'EUR', settings: {} },
  });
});
afterAll(() => test.drop());

const mail: MailGiven = {
  event: 'test',
  to: { name: 'Greta', address: 'greta@client.example' },
  subject: 'Your quote',
  text: 'Dear Greta',
  about: { kind: 'quote', id: 'x' },
};
async function refusedField(changed: Partial<MailGiven>): Promise<string | undefined> {
  const error: unknown = await queueMail(test.database, { ...mail, ...changed }).catch((thrown) => thrown);
  expect(error).toMatchObject({ code: 'input-invalid' });
  return (error as { errors: { field: string }[] }).errors[0]?.field;
}

describe('a mail that cannot be sent as given is refused', () => {
  it.each([
    'greta',
    'greta@client.example\r\nBcc: all@client.example',
    'greta@client.example, nils@client.example',
    'Greta <greta@client.example>',
    `${'g'.repeat(65)}@client.example`,
    '@client.example',
    '',
  ])('to the address %j', async (address) => {
    expect(await refusedField({ to: { name: '', address } })).toBe('to.address');
  });

  it.each([
    [{ to: { name: 'Greta\r\nBcc: all@client.example', address: 'greta@client.example' } }, 'to.name'],
    [{ subject: 'Quote\nBcc: all@client.example' }, 'subject'],
    [{ subject: 'Quote\u2028X' }, 'subject'],
    [{ subject: '   ' }, 'subject'],
    [{ subject: 'x'.repeat(201) }, 'subject'],
    [{ text: ' \n' }, 'text'],
    [{ text: 'a\u0007b' }, 'text'],
    [{ attachments: ['0193f6a0-0000-7000-8000-000000000009'] }, 'attachments'],
  ])('%j', async (changed, field) => {
    expect(await refusedField(changed)).toBe(field);
  });

  it('with more attached than mail servers take, or one thing twice', async () => {
    const bytes = Buffer.alloc(10 * 1024 * 1024, 'x');
    const paper = { kind: 'quote', fileName: 'a.pdf', mediaType: 'application/pdf', bytes } as const;
    const [one, two] = [await storeDocument(test.database, paper), await storeDocument(test.database, paper)];
    expect(await refusedField({ attachments: [one.id, two.id] })).toBe('attachments');
    expect(await refusedField({ attachments: [one.id, one.id] })).toBe('attachments');
  });

  it('and leaves nothing behind', async () => {
    expect(await test.database.outboxMail.count()).toBe(0);
  });
});

describe('attempts', () => {
  it('come at growing distances and end after four to five days at the least', () => {
    const waits: number[] = [];
    for (let made = 1; ; made += 1) {
      const wait = retryDelayS(made);
      if (wait === undefined) break;
      waits.push(wait);
    }
    expect(waits).toEqual([...waits].sort((one, other) => one - other));
    // RFC 5321, section 4.5.4.1.
    const days = waits.reduce((sum, wait) => sum + wait, 0) / 86_400;
    expect(days).toBeGreaterThanOrEqual(5);
    expect(days).toBeLessThan(7);
  });
});
