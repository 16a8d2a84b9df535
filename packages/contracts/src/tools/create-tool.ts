import { defineContract } from '../contract.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleTool, exampleToolInput, toolInputSchema, toolSchema } from './tool.ts';

export const createTool = defineContract({
  name: 'create-tool',
  method: 'POST',
  path: '/api/tools',
  summary: 'Enter a tool',
  description:
    'A hired tool has its price by the hour; a tool that was given has a book cost of 0. Machines named as attached must exist and must not lead back to this one.',
  tag: 'tools',
  roles: RECORD_KEEPERS,
  body: toolInputSchema,
  answer: toolSchema,
  status: 201,
  givesEtag: true,
  example: { body: exampleToolInput, answer: exampleTool },
});
