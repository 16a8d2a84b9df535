import { XLSX_TYPE } from '@scantling/contracts';
import type { Workbook } from '@scantling/figures';
import { renderWorkbook } from '@scantling/renderers';
import { FileAnswer } from './handle.ts';

/** A workbook as the file a route answers with, named without its ending. */
export async function workbookAnswer(name: string, workbook: Workbook): Promise<FileAnswer> {
  return new FileAnswer(`${name}.xlsx`, XLSX_TYPE, await renderWorkbook(workbook));
}
