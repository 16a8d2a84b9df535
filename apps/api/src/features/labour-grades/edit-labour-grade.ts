import { editLabourGrade } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeLabourGrade } from './labour-grade-records.ts';

export const answerEditLabourGrade = handle(editLabourGrade, ({ params, body, expectedVersion, services }) =>
  changeLabourGrade(services.database, { id: params.id, version: expectedVersion() }, body),
);
