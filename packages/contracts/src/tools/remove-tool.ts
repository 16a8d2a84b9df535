import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { RECORD_KEEPERS } from '../roles.ts';
import { exampleTool } from './tool.ts';

export const removeTool = defineContract({
  name: 'remove-tool',
  method: 'DELETE',
  path: '/api/tools/:id',
  summary: 'Remove a tool',
  description:
    'Refused while another machine names it as attached. Operations that name its code can no longer be costed.',
  tag: 'tools',
  roles: RECORD_KEEPERS,
  params: recordParams,
  needsIfMatch: true,
  example: { params: { id: exampleTool.id } },
});
