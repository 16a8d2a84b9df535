import { z } from 'zod';
import { defineContract } from '../contract.ts';

export const getReadiness = defineContract({
  name: 'get-readiness',
  method: 'GET',
  path: '/api/ready',
  summary: 'Can the program serve',
  description: 'Asks the database; 503 while it does not answer.',
  tag: 'service',
  roles: 'visitor',
  answer: z.strictObject({ status: z.literal('ready') }),
  example: { answer: { status: 'ready' } },
});
