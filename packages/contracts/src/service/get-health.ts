import { z } from 'zod';
import { defineContract } from '../contract.ts';

export const getHealth = defineContract({
  name: 'get-health',
  method: 'GET',
  path: '/api/health',
  summary: 'Is the program running',
  description: 'Answers without touching the database.',
  tag: 'service',
  roles: 'visitor',
  answer: z.strictObject({ status: z.literal('running') }),
  example: { answer: { status: 'running' } },
});
