import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleLabourGrade, labourGradeSchema } from './labour-grade.ts';

export const listLabourGrades = defineContract({
  name: 'list-labour-grades',
  method: 'GET',
  path: '/api/labour-grades',
  summary: 'List the labour grades',
  description: 'By name; what an hour of each costs is at /api/labour-rates.',
  tag: 'labour-grades',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(labourGradeSchema),
  example: { query: { limit: 50 }, answer: { items: [exampleLabourGrade], next: null } },
});
