import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleLabourGrade, labourGradeSchema } from './labour-grade.ts';

export const getLabourGrade = defineContract({
  name: 'get-labour-grade',
  method: 'GET',
  path: '/api/labour-grades/:id',
  summary: 'Read a labour grade',
  description: 'With its version as ETag, which a change must name.',
  tag: 'labour-grades',
  roles: 'anyone',
  params: recordParams,
  answer: labourGradeSchema,
  givesEtag: true,
  example: { params: { id: exampleLabourGrade.id }, answer: exampleLabourGrade },
});
