import { getInvoice } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { findInvoice } from './invoice-rows.ts';

export const answerGetInvoice = handle(getInvoice, ({ params: { id }, services }) =>
  findInvoice(services.database, id, dayOf(services.clock())),
);
