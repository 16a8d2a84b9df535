import { createEnquiry, editEnquiry, getEnquiry, listEnquiries, removeEnquiry } from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const enquiryCalls = recordCalls('enquiries', {
  list: listEnquiries,
  get: getEnquiry,
  create: createEnquiry,
  edit: editEnquiry,
  remove: removeEnquiry,
});
