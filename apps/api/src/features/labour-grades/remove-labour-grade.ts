import { removeLabourGrade } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropLabourGrade } from './labour-grade-records.ts';

export const answerRemoveLabourGrade = handle(
  removeLabourGrade,
  async ({ params, expectedVersion, services }) => {
    await dropLabourGrade(services.database, { id: params.id, version: expectedVersion() });
    return undefined;
  },
);
