import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { exampleEnquiry } from './enquiry.ts';
import { enquiryHoursSchema, exampleEnquiryHours } from './enquiry-hours.ts';

export const listEnquiryHours = defineContract({
  name: 'list-enquiry-hours',
  method: 'GET',
  path: '/api/enquiries/:id/hours',
  summary: 'Read the hours spent on an enquiry',
  description: 'The newest first.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery,
  answer: pageOf(enquiryHoursSchema),
  example: { params: { id: exampleEnquiry.id }, answer: { items: [exampleEnquiryHours], next: null } },
});
