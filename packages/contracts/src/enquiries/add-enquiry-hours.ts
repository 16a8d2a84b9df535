import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleEnquiry } from './enquiry.ts';
import {
  enquiryHoursInputSchema,
  enquiryHoursSchema,
  exampleEnquiryHours,
  exampleEnquiryHoursInput,
} from './enquiry-hours.ts';

export const addEnquiryHours = defineContract({
  name: 'add-enquiry-hours',
  method: 'POST',
  path: '/api/enquiries/:id/hours',
  summary: 'Enter hours spent on an enquiry',
  description: 'The grade of the person is kept with them. Hours on lost enquiries go to overhead.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: enquiryHoursInputSchema,
  answer: enquiryHoursSchema,
  status: 201,
  idempotent: true,
  example: {
    params: { id: exampleEnquiry.id },
    body: exampleEnquiryHoursInput,
    answer: exampleEnquiryHours,
  },
});
