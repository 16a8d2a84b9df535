import { createTool, editTool, getTool, listTools, removeTool } from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const toolCalls = recordCalls('tools', {
  list: listTools,
  get: getTool,
  create: createTool,
  edit: editTool,
  remove: removeTool,
});
