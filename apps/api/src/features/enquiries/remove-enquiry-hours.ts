import { removeEnquiryHours } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropHours } from './enquiry-hours-records.ts';

export const answerRemoveEnquiryHours = handle(removeEnquiryHours, async ({ params, services }) => {
  await dropHours(services.database, params.id, params.hoursId);
  return undefined;
});
