import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';

/** What stored papers and files may be; nothing a browser would run. */
export const DOCUMENT_MEDIA_TYPES = [
  'application/pdf',
  'application/zip',
  'application/xml',
  'text/csv',
  'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
] as const;
export type DocumentMediaType = (typeof DOCUMENT_MEDIA_TYPES)[number];

export const getDocument = defineContract({
  name: 'get-document',
  method: 'GET',
  path: '/api/documents/:id',
  summary: 'Read a stored paper or file',
  description:
    'The bytes as they were sent or published, which never change: the ETag is their SHA-256, and they may be kept for good.',
  tag: 'documents',
  roles: 'anyone',
  params: recordParams,
  givesFile: DOCUMENT_MEDIA_TYPES,
  example: { params: { id: '0193f6a0-7c11-7000-8000-000000000009' } },
});
