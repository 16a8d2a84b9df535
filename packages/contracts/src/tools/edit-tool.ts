import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleTool, exampleToolInput, toolInputSchema, toolSchema } from './tool.ts';

export const editTool = defineContract({
  name: 'edit-tool',
  method: 'PUT',
  path: '/api/tools/:id',
  summary: 'Change a tool',
  description:
    'Takes the whole record. A hired tool has its price by the hour; a tool that was given has a book cost of 0. Machines named as attached must exist and must not lead back to this one.',
  tag: 'tools',
  roles: RECORD_KEEPERS,
  params: recordParams,
  body: toolInputSchema,
  answer: toolSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: { params: { id: exampleTool.id }, body: exampleToolInput, answer: { ...exampleTool, version: 2 } },
});
