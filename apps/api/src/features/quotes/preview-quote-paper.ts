import { previewQuotePaper } from '@scantling/contracts';
import { quotePaper } from '@scantling/quoting';
import { FileAnswer, handle } from '../../handle.ts';
import { picturesOf } from './document-pictures.ts';
import { findRevisionRow } from './quote-records.ts';
import { previewDocument } from './write-document.ts';

export const answerPreviewQuotePaper = handle(previewQuotePaper, async ({ params, services }) => {
  const { database, clock, papers } = services;
  const document = await previewDocument(database, await findRevisionRow(database, params.id), clock());
  const paper = quotePaper({ ...document, number: document.number === '' ? 'Preview' : document.number });
  const bytes = await papers.render(paper, await picturesOf(database, document));
  return new FileAnswer('Preview.pdf', 'application/pdf', bytes, { isInline: true });
});
