import {
  createLabourGrade,
  editLabourGrade,
  getLabourGrade,
  listLabourGrades,
  removeLabourGrade,
} from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const labourGradeCalls = recordCalls('labour-grades', {
  list: listLabourGrades,
  get: getLabourGrade,
  create: createLabourGrade,
  edit: editLabourGrade,
  remove: removeLabourGrade,
});
