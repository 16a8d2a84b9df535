import { costSheet } from '@scantling/costing';
import { defineContract } from '../contract.ts';
import { exampleSheetInput } from '../cost-sheets/example-sheet-input.ts';
import { toWorkedCostSheet, workedCostSheetSchema } from '../cost-sheets/worked-cost-sheet.ts';
import { workingQuery } from '../figures.ts';
import { exampleRevision } from './quote.ts';
import { quoteLineParams } from './work-out-quote.ts';

export const workOutQuoteLine = defineContract({
  name: 'work-out-quote-line',
  method: 'GET',
  path: '/api/quote-revisions/:id/lines/:lineId/figures',
  summary: 'Read the cost sheet behind a line',
  description:
    'At the line’s number of pieces: as it is today while the quote is a draft, as it was frozen once it was sent.',
  tag: 'quotes',
  roles: 'anyone',
  params: quoteLineParams,
  query: workingQuery,
  answer: workedCostSheetSchema,
  example: {
    params: { id: exampleRevision.id, lineId: 'bench' },
    answer: toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: false }),
  },
});
