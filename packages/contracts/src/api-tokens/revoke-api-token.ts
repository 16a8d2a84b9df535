import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { OWNER_ONLY } from '../roles.ts';
import { apiTokenSchema, exampleApiToken } from './api-token.ts';

export const revokeApiToken = defineContract({
  name: 'revoke-api-token',
  method: 'POST',
  path: '/api/api-tokens/:id/revoke',
  summary: 'Revoke a token',
  description: 'Holds from the next request on; revoking twice changes nothing.',
  tag: 'api-tokens',
  roles: OWNER_ONLY,
  params: recordParams,
  answer: apiTokenSchema,
  example: {
    params: { id: exampleApiToken.id },
    answer: { ...exampleApiToken, revokedAt: '2026-03-02T08:00:00.000Z' },
  },
});
