import { defineContract } from '../contract.ts';
import { XLSX_TYPE } from '../designs/export-bill.ts';
import { OWNER_ONLY } from '../roles.ts';
import { exampleRevision } from './quote.ts';
import { quoteLineParams } from './work-out-quote.ts';

export const downloadQuoteLine = defineContract({
  name: 'download-quote-line',
  method: 'GET',
  path: '/api/quote-revisions/:id/lines/:lineId/workbook',
  summary: 'Download the cost sheet behind a line as a spreadsheet that calculates',
  description:
    'As download-cost-sheet, at the line’s number of pieces: from the frozen figures once the quote was sent, as of today while it is a draft.',
  tag: 'quotes',
  roles: OWNER_ONLY,
  params: quoteLineParams,
  givesFile: [XLSX_TYPE],
  example: { params: { id: exampleRevision.id, lineId: 'bench' } },
});
