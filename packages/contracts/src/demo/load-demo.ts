import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { OWNER_ONLY } from '../roles.ts';
import { demoContentSchema, exampleDemoContent } from './demo-content.ts';

export const loadDemo = defineContract({
  name: 'load-demo',
  method: 'POST',
  path: '/api/demo',
  summary: 'Load the demo workshop',
  description:
    'An invented workshop with suppliers, prices, tools, people, designs and cost sheets. Loading it again changes nothing. Refused where the workshop has shop rates or codes of its own that the demo would mix with.',
  tag: 'demo',
  roles: OWNER_ONLY,
  answer: z.strictObject({
    /** False where it was there already. */
    isNew: z.boolean(),
    content: demoContentSchema,
  }),
  example: { answer: { isNew: true, content: exampleDemoContent } },
});
