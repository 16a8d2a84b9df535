import { ENQUIRY_OUTCOMES, ENQUIRY_SOURCES } from '@scantling/quoting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { calendarDate, recordId } from '../record.ts';
import { enquirySchema, exampleEnquiry } from './enquiry.ts';

export const listEnquiries = defineContract({
  name: 'list-enquiries',
  method: 'GET',
  path: '/api/enquiries',
  summary: 'List the enquiries',
  description: 'The newest first; by outcome, source, client or day received.',
  tag: 'enquiries',
  roles: 'anyone',
  query: pageQuery.extend({
    outcome: z.enum(ENQUIRY_OUTCOMES).optional(),
    source: z.enum(ENQUIRY_SOURCES).optional(),
    clientId: recordId.optional(),
    receivedFrom: calendarDate.optional(),
    receivedTo: calendarDate.optional(),
  }),
  answer: pageOf(enquirySchema),
  example: { query: { limit: 50, outcome: 'open' }, answer: { items: [exampleEnquiry], next: null } },
});
