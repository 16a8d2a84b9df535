import { addEnquiryHours } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addHours } from './enquiry-hours-records.ts';

export const answerAddEnquiryHours = handle(addEnquiryHours, ({ params, body, services }) =>
  services.database.$transaction((transaction) => addHours(transaction, params.id, body)),
);
