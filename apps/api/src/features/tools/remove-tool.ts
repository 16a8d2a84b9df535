import { removeTool } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropTool } from './tool-records.ts';

export const answerRemoveTool = handle(removeTool, async ({ params, expectedVersion, services }) => {
  await dropTool(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
