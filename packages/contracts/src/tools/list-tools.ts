import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleTool, toolSchema } from './tool.ts';

export const listTools = defineContract({
  name: 'list-tools',
  method: 'GET',
  path: '/api/tools',
  summary: 'List the tools',
  description: 'By name.',
  tag: 'tools',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(toolSchema),
  example: { query: { limit: 50 }, answer: { items: [exampleTool], next: null } },
});
