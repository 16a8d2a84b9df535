import { createTool } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addTool } from './tool-records.ts';

export const answerCreateTool = handle(createTool, ({ body, services }) => addTool(services.database, body));
