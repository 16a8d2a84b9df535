import { editTool } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeTool } from './tool-records.ts';

export const answerEditTool = handle(editTool, ({ params, body, expectedVersion, services }) =>
  changeTool(services.database, { id: params.id, version: expectedVersion() }, body),
);
