import { listEnquiries } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { readDayAndId } from '../../pages/day-cursor.ts';
import { enquiryPage, toEnquiry } from './enquiry-records.ts';

export const answerListEnquiries = handle(listEnquiries, async ({ query, services }) => {
  const { cursor, limit, ...filters } = query;
  const rows = await enquiryPage(services.database, filters, limit, readDayAndId(readCursor(cursor, 2)));
  return toPage(rows, limit, (row) => [row.receivedOn.toISOString().slice(0, 10), row.id], toEnquiry);
});
