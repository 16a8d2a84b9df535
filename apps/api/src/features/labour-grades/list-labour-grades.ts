import { listLabourGrades } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { labourGradePage, toLabourGrade } from './labour-grade-records.ts';

export const answerListLabourGrades = handle(listLabourGrades, async ({ query, services }) => {
  const rows = await labourGradePage(services.database, query.limit, readCursor(query.cursor, 2));
  return toPage(rows, query.limit, (row) => [row.name, row.id], toLabourGrade);
});
