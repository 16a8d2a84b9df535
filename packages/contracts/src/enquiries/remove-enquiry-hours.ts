import { defineContract } from '../contract.ts';
import { recordId, recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';
import { exampleEnquiryHours } from './enquiry-hours.ts';

export const removeEnquiryHours = defineContract({
  name: 'remove-enquiry-hours',
  method: 'DELETE',
  path: '/api/enquiries/:id/hours/:hoursId',
  summary: 'Take back hours entered by mistake',
  description: 'One entry.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams.extend({ hoursId: recordId }),
  example: { params: { id: exampleEnquiry.id, hoursId: exampleEnquiryHours.id } },
});
