import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { enquiryInputSchema, enquirySchema, exampleEnquiry, exampleEnquiryInput } from './enquiry.ts';

const lost = { outcome: 'lost', outcomeOn: '2026-03-20', outcomeReason: 'Too dear' } as const;

export const editEnquiry = defineContract({
  name: 'edit-enquiry',
  method: 'PUT',
  path: '/api/enquiries/:id',
  summary: 'Change an enquiry, or say what came of it',
  description: 'Takes the whole record. Won and lost need their day, lost also its reason.',
  tag: 'enquiries',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: enquiryInputSchema,
  answer: enquirySchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleEnquiry.id },
    body: { ...exampleEnquiryInput, ...lost },
    answer: { ...exampleEnquiry, ...lost, version: 2 },
  },
});
