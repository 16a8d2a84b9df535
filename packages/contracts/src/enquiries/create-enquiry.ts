import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { enquiryInputSchema, enquirySchema, exampleEnquiry, exampleEnquiryInput } from './enquiry.ts';

export const createEnquiry = defineContract({
  name: 'create-enquiry',
  method: 'POST',
  path: '/api/enquiries',
  summary: 'Enter an enquiry',
  description:
    'From a client on record, or from somebody with a name. Personal data: keep to what the work needs.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  body: enquiryInputSchema,
  answer: enquirySchema,
  status: 201,
  givesEtag: true,
  idempotent: true,
  example: { body: exampleEnquiryInput, answer: exampleEnquiry },
});
