import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';

export const removeEnquiry = defineContract({
  name: 'remove-enquiry',
  method: 'DELETE',
  path: '/api/enquiries/:id',
  summary: 'Remove an enquiry',
  description: 'Its hours and early prices go with it, and its hours leave the overhead.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleEnquiry.id } },
});
