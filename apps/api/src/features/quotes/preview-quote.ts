import { previewQuote } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findRevisionRow } from './quote-records.ts';
import { previewDocument } from './write-document.ts';

export const answerPreviewQuote = handle(previewQuote, async ({ params, services }) => {
  const { database, clock } = services;
  const row = await findRevisionRow(database, params.id);
  return {
    document: await previewDocument(database, row, clock()),
    mailTo: row.quote.client.email,
  };
});
