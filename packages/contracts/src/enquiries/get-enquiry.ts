import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { enquirySchema, exampleEnquiry } from './enquiry.ts';

export const getEnquiry = defineContract({
  name: 'get-enquiry',
  method: 'GET',
  path: '/api/enquiries/:id',
  summary: 'Read an enquiry',
  description: 'With its version as ETag, which a change must name.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams,
  answer: enquirySchema,
  givesEtag: true,
  example: { params: { id: exampleEnquiry.id }, answer: exampleEnquiry },
});
