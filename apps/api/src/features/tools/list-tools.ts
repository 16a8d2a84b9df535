import { listTools } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { toolPage, toTool } from './tool-records.ts';

export const answerListTools = handle(listTools, async ({ query, services }) => {
  const rows = await toolPage(services.database, query.limit, readCursor(query.cursor, 2));
  return toPage(rows, query.limit, (row) => [row.name, row.id], toTool);
});
