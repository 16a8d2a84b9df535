import { createHash } from 'node:crypto';
import { invoiceDocumentSchema } from '@scantling/contracts';
import { type InvoiceDocument, invoicePaper } from '@scantling/quoting';
import { createPaperRenderer } from '@scantling/renderers';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { acceptedQuote } from '../../../../../tests/api/accepted-quotes.ts';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { textHash } from '../quotes/answer-revision.ts';

let test: QuotingWorkshop;
const papers = createPaperRenderer();
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(async () => {
  await papers.close();
  await test.close();
});

const make = (document: InvoiceDocument) => papers.render(invoicePaper(document), new Map());
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

it('the paper of an issued invoice is served as it was stored, and made again within one build it has the same bytes', async () => {
  const { quoteId } = await acceptedQuote(test, 'The same bytes');
  const as = test.as('bookkeeper');
  const { body: invoice } = await test.request
    .post(`/api/quotes/${quoteId}/invoices`)
    .set(as)
    .send({ wanted: { kind: 'final', suppliedOn: '2026-03-01' } })
    .expect(201);
  const serve = async () => (await test.request.get(`/api/documents/${invoice.paperId}`).set(as)).body;
  const first: Buffer = await serve();
  const { sha256: stored } = await test.database.storedDocument.findUniqueOrThrow({
    where: { id: invoice.paperId },
    select: { sha256: true },
  });
  expect(sha256(first)).toBe(stored);

  // A payment and a credit note later, what was issued is the same.
  await test.request
    .post(`/api/invoices/${invoice.id}/payments`)
    .set(as)
    .send({ amount: '1', receivedOn: '2026-03-02', method: 'cash' })
    .expect(201);
  await test.request
    .post(`/api/invoices/${invoice.id}/credit-notes`)
    .set(as)
    .send({ amount: '1', reason: 'A scratch' })
    .expect(201);
  expect(sha256(await serve())).toBe(stored);

  const row = await test.database.invoice.findUniqueOrThrow({ where: { id: invoice.id } });
  const document = invoiceDocumentSchema.parse(row.document);
  expect(textHash(document)).toBe(invoice.documentHash);
  const made = [await make(document), await make(document)];
  expect(made.map(sha256)).toEqual([stored, stored]);
  const other = await make({ ...document, note: 'Another word.' });
  expect(sha256(other)).not.toBe(stored);
}, 60_000);
