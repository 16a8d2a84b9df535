import { XLSX_TYPE } from '@scantling/contracts';
import type { Workbook } from '@scantling/figures';
import { renderWorkbook } from '@scantling/renderers';
import type { WorkbookAbout } from '@scantling/workbooks';
import { FileAnswer } from './handle.ts';
import type { Services } from './services.ts';
import { readWorkshop } from './shop/workshop-record.ts';

/** A workbook as the file a route answers with, named without its ending. */
export async function workbookAnswer(name: string, workbook: Workbook): Promise<FileAnswer> {
  return new FileAnswer(`${name}.xlsx`, XLSX_TYPE, await renderWorkbook(workbook));
}

/** Whose rates a workbook shows, and as of when. @throws RequestProblem not-found before the workshop is set up */
export async function workbookAbout({ database, clock }: Services): Promise<WorkbookAbout> {
  const { name, currency, settings } = await readWorkshop(database);
  const date = clock().toISOString().slice(0, 10);
  return { workshopName: name, currency, date, paper: settings.letterhead.paperSize };
}
