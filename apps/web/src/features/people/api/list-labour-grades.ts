import { type LabourGradeRecord, listLabourGrades } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** The grades a person can be of. */
export const gradeChoicesQuery = queryOptions({
  queryKey: ['labour-grades', 'choices'],
  queryFn: async ({ signal }) => {
    const grades = await everyItem<LabourGradeRecord>(listLabourGrades, {}, signal);
    return grades.map(({ id, name, code }) => ({ id, label: name, note: code }));
  },
});
