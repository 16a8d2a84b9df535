import { getTool } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findTool } from './tool-records.ts';

export const answerGetTool = handle(getTool, ({ params, services }) =>
  findTool(services.database, params.id),
);
