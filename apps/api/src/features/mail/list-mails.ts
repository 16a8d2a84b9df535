import { listMails } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { mailPage, toMailSummary } from './mail-records.ts';

export const answerListMails = handle(listMails, async ({ query, services }) => {
  const { limit, cursor, ...wanted } = query;
  const rows = await mailPage(services.database, wanted, { limit, after: readCursor(cursor, 1) });
  return toPage(rows, limit, (row) => [row.id], toMailSummary);
});
