import { createEnquiry } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addEnquiry } from './enquiry-records.ts';

export const answerCreateEnquiry = handle(createEnquiry, ({ body, services }) =>
  services.database.$transaction((transaction) => addEnquiry(transaction, body)),
);
