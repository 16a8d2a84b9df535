import { CSV_TYPE, exportBill, XLSX_TYPE } from '@scantling/contracts';
import { writeCsv, writeWorkbook } from '@scantling/renderers';
import { FileAnswer, handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { billTable, lengthUnitOf } from './bill-file.ts';
import { findDesign } from './design-records.ts';

export const answerExportBill = handle(exportBill, async ({ params, query, services }) => {
  const design = await findDesign(services.database, params.id);
  if (design === null) throw notFound('design');
  const table = billTable(design, lengthUnitOf(design.unitSystem));
  const name = `${design.code} bill of materials`;
  return query.format === 'csv'
    ? new FileAnswer(`${name}.csv`, CSV_TYPE, Buffer.from(writeCsv(table)))
    : new FileAnswer(
        `${name}.xlsx`,
        XLSX_TYPE,
        await writeWorkbook([{ name: 'Bill of materials', rows: table }]),
      );
});
