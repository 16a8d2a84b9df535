import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';
import { removeDemoDocuments, safeFileName, storeDocument } from './store-document.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

const bytes = Buffer.from('%PDF-1.7 an invented paper\n');
const sha256 = createHash('sha256').update(bytes).digest('hex');
const paper = {
  kind: 'quote',
  fileName: 'Quote Q-2026-0001.pdf',
  mediaType: 'application/pdf',
  bytes,
} as const;

const store = (changed: object = {}) => storeDocument(test.database, { ...paper, ...changed });
const read = (id: string) => test.request.get(`/api/documents/${id}`).set(test.as('bookkeeper'));

describe('a stored document', () => {
  it('is served as it was stored, to be kept for good', async () => {
    const stored = await store();
    expect(stored.sha256).toBe(sha256);
    const answer = await read(stored.id).buffer().expect(200);
    expect(Buffer.compare(answer.body, bytes)).toBe(0);
    expect(answer.headers).toMatchObject({
      'content-type': 'application/pdf',
      etag: `"${sha256}"`,
      'cache-control': 'private, max-age=31536000, immutable',
      'content-disposition':
        'inline; filename="Quote-Q-2026-0001.pdf"; filename*=UTF-8\'\'Quote%20Q-2026-0001.pdf',
      'x-content-type-options': 'nosniff',
    });
    expect(answer.headers['content-encoding']).toBeUndefined();
    const again = await read(stored.id).set('if-none-match', `"other", W/"${sha256}"`).expect(304);
    expect(again.text).toBe('');
  });

  it('of another kind than a paper is saved, not opened', async () => {
    const { id } = await store({
      mediaType: 'text/csv',
      fileName: 'List.csv',
      bytes: Buffer.from('a;b\n1;2\n'),
    });
    const { headers } = await read(id).expect(200);
    expect(headers['content-disposition']).toMatch(/^attachment; /);
  });

  it('is for those who signed in, those who only read too', async () => {
    const { id } = await store();
    await test.request.get(`/api/documents/${id}`).expect(401);
    await test.request.get(`/api/documents/${id}`).set(test.as('read-only')).expect(200);
    await read('0193f6a0-0000-7000-8000-000000000009').expect(404);
    await read('..%2F..%2Fetc%2Fpasswd').expect(404);
  });

  it('has no change and no end', async () => {
    const { id } = await store({ isDemo: true });
    const where = { id };
    const { storedDocument } = test.database;
    const refused = /never changed or removed/;
    await expect(storedDocument.update({ where, data: { fileName: 'x' } })).rejects.toThrow(refused);
    await expect(storedDocument.delete({ where })).rejects.toThrow(refused);
    await expect(test.database.$executeRaw`truncate "StoredDocument" cascade`).rejects.toThrow(
      /never removed/,
    );
    expect(await storedDocument.count({ where: { id, fileName: paper.fileName } })).toBe(1);
  });

  it('of the demo goes with the demo, or becomes the workshop’s own', async () => {
    const own = await store();
    const [kept, gone] = [await store({ isDemo: true }), await store({ isDemo: true })];
    await test.database.$transaction(async (transaction) => {
      await removeDemoDocuments(transaction, [kept.id]);
      // The way is shut again within the same transaction.
      await expect(transaction.storedDocument.count()).resolves.toBeGreaterThan(1);
    });
    const ids = [own.id, kept.id, gone.id];
    const left = await test.database.storedDocument.findMany({
      where: { id: { in: ids } },
      select: { id: true, isDemo: true },
    });
    expect(left.map((row) => [row.id, row.isDemo]).sort()).toEqual(
      [
        [own.id, false],
        [kept.id, false],
      ].sort(),
    );
    await expect(test.database.storedDocument.delete({ where: { id: own.id } })).rejects.toThrow();
  });

  it('of the workshop cannot be changed even while the demo is removed', async () => {
    const { id } = await store();
    const attempt = test.database.$transaction(async (transaction) => {
      await transaction.$executeRaw`set local scantling.removing_demo = 'on'`;
      await transaction.storedDocument.delete({ where: { id } });
    });
    await expect(attempt).rejects.toThrow(/never changed or removed/);
  });

  it('is not empty', async () => {
    await expect(store({ bytes: Buffer.alloc(0) })).rejects.toThrow(RangeError);
  });
});

describe('a file name', () => {
  it.each([
    ['../../etc/passwd', '-..-etc-passwd'],
    ['Quote 2026/0001.pdf', 'Quote 2026-0001.pdf'],
    ['a\r\nSet-Cookie: x.pdf', 'aSet-Cookie- x.pdf'],
    ['evil\u202Efdp.exe', 'evilfdp.exe'],
    ['...', 'document'],
    ['Schreibtisch für Åsa.pdf', 'Schreibtisch für Åsa.pdf'],
  ])('%j is kept as %j', (given, kept) => {
    expect(safeFileName(given)).toBe(kept);
  });
});
