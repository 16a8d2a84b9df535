import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import {
  exampleLabourGrade,
  exampleLabourGradeInput,
  labourGradeInputSchema,
  labourGradeSchema,
} from './labour-grade.ts';

export const editLabourGrade = defineContract({
  name: 'edit-labour-grade',
  method: 'PUT',
  path: '/api/labour-grades/:id',
  summary: 'Change a labour grade',
  description:
    "Takes the whole record. An owner's grade needs a pay above 0: their hours are costed even if nobody pays them.",
  tag: 'labour-grades',
  roles: MAKERS,
  params: recordParams,
  body: labourGradeInputSchema,
  answer: labourGradeSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: {
    params: { id: exampleLabourGrade.id },
    body: exampleLabourGradeInput,
    answer: { ...exampleLabourGrade, version: 2 },
  },
});
