import { getLabourGrade } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findLabourGrade } from './labour-grade-records.ts';

export const answerGetLabourGrade = handle(getLabourGrade, ({ params, services }) =>
  findLabourGrade(services.database, params.id),
);
