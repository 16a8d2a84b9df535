import { downloadQuoteLine } from '@scantling/contracts';
import { costSheetWorkbook } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { workbookAnswer } from '../../workbook-answer.ts';
import { lineSheet } from './line-sheet.ts';
import { dayOf } from './quote-rows.ts';

export const answerDownloadQuoteLine = handle(downloadQuoteLine, async ({ params, services }) => {
  const { database, clock } = services;
  const { name, settings } = await readWorkshop(database);
  const sheet = await lineSheet(database, params, dayOf(clock()), { withDerivations: true });
  const { title, worked, unit, isFrozen } = sheet;
  const workbook = costSheetWorkbook({
    title,
    facts: [
      `${isFrozen ? 'As frozen when the quote was sent' : 'Of a quote that is not sent yet'}. ${name}.`,
    ],
    worked,
    lengths: unit,
    paper: settings.letterhead.paperSize,
  });
  return workbookAnswer(title, workbook);
});
