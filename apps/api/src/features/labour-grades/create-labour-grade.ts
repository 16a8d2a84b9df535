import { createLabourGrade } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addLabourGrade } from './labour-grade-records.ts';

export const answerCreateLabourGrade = handle(createLabourGrade, ({ body, services }) =>
  addLabourGrade(services.database, body),
);
