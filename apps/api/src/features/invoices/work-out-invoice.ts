import { workOutInvoice } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { readBilledQuote } from './billing-records.ts';
import { draftInvoice } from './invoice-document.ts';
import { toWorkedInvoice } from './write-invoice.ts';

export const answerWorkOutInvoice = handle(
  workOutInvoice,
  async ({ params: { id }, body, services: { database, clock } }) => {
    const contract = await readBilledQuote(database, id);
    const workshop = await readWorkshop(database);
    const { document, worked } = draftInvoice(contract, body, { workshop, today: dayOf(clock()) });
    return { document, ...toWorkedInvoice(worked) };
  },
);
