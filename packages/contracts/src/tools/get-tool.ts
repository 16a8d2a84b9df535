import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleTool, toolSchema } from './tool.ts';

export const getTool = defineContract({
  name: 'get-tool',
  method: 'GET',
  path: '/api/tools/:id',
  summary: 'Read a tool',
  description: 'With its version as ETag, which a change must name.',
  tag: 'tools',
  roles: 'anyone',
  params: recordParams,
  answer: toolSchema,
  givesEtag: true,
  example: { params: { id: exampleTool.id }, answer: exampleTool },
});
