import { z } from 'zod';
import { moment, recordId } from '../record.ts';
import { roleSchema } from '../roles.ts';

export const apiTokenSchema = z
  .strictObject({
    id: recordId,
    name: z.string(),
    role: roleSchema,
    prefix: z.string().meta({ description: 'The first characters of the token, to tell tokens apart' }),
    createdBy: z.string().nullable().meta({ description: 'Name of the person who made it' }),
    createdAt: moment,
    lastUsedAt: moment.nullable(),
    revokedAt: moment.nullable(),
  })
  .meta({ id: 'ApiToken' });
export type ApiToken = z.output<typeof apiTokenSchema>;

export const exampleApiToken = {
  id: '0193f6a0-7c11-7000-8000-000000000002',
  name: 'Accountant export',
  role: 'bookkeeper',
  prefix: 'sct_Qm3t',
  createdBy: 'Noor Ashdown',
  createdAt: '2026-03-01T09:30:00.000Z',
  lastUsedAt: null,
  revokedAt: null,
} as const;
