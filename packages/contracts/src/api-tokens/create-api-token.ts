import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { givenName } from '../record.ts';
import { OWNER_ONLY, roleSchema } from '../roles.ts';
import { apiTokenSchema, exampleApiToken } from './api-token.ts';

export const createApiToken = defineContract({
  name: 'create-api-token',
  method: 'POST',
  path: '/api/api-tokens',
  summary: 'Make a token for a program',
  description:
    'The token is shown in this answer and never again; only its SHA-256 is kept. Send it as "Authorization: Bearer ...".',
  tag: 'api-tokens',
  roles: OWNER_ONLY,
  body: z.strictObject({ name: givenName, role: roleSchema }),
  answer: z.strictObject({ token: z.string(), apiToken: apiTokenSchema }),
  status: 201,
  example: {
    body: { name: exampleApiToken.name, role: exampleApiToken.role },
    answer: { token: 'sct_Qm3t-example-that-opens-nothing', apiToken: exampleApiToken },
  },
});
