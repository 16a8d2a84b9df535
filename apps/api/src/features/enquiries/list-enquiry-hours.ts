import { listEnquiryHours } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { readDayAndId } from '../../pages/day-cursor.ts';
import { hoursPage, toEnquiryHours } from './enquiry-hours-records.ts';

export const answerListEnquiryHours = handle(listEnquiryHours, async ({ params, query, services }) => {
  const after = readDayAndId(readCursor(query.cursor, 2));
  const rows = await hoursPage(services.database, params.id, query.limit, after);
  return toPage(rows, query.limit, (row) => [row.onDate.toISOString().slice(0, 10), row.id], toEnquiryHours);
});
