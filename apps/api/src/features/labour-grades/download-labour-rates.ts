import { downloadLabourRates } from '@scantling/contracts';
import { labourRatesWorkbook } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { workbookAbout, workbookAnswer } from '../../workbook-answer.ts';
import { workedLabourRates } from './worked-labour-rates.ts';

export const answerDownloadLabourRates = handle(downloadLabourRates, async ({ services }) => {
  const worked = await workedLabourRates(services.database, { withDerivations: true });
  return workbookAnswer('labour-rates', labourRatesWorkbook(worked, await workbookAbout(services)));
});
