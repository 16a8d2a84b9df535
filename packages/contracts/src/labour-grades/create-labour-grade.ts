import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import {
  exampleLabourGrade,
  exampleLabourGradeInput,
  labourGradeInputSchema,
  labourGradeSchema,
} from './labour-grade.ts';

export const createLabourGrade = defineContract({
  name: 'create-labour-grade',
  method: 'POST',
  path: '/api/labour-grades',
  summary: 'Enter a labour grade',
  description: "An owner's grade needs a pay above 0: their hours are costed even if nobody pays them.",
  tag: 'labour-grades',
  roles: MAKERS,
  body: labourGradeInputSchema,
  answer: labourGradeSchema,
  status: 201,
  givesEtag: true,
  example: { body: exampleLabourGradeInput, answer: exampleLabourGrade },
});
