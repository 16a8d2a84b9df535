import { downloadOverheadRecovery } from '@scantling/contracts';
import { overheadWorkbook } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { workbookAbout, workbookAnswer } from '../../workbook-answer.ts';
import { workedRecovery } from './worked-recovery.ts';

export const answerDownloadOverheadRecovery = handle(downloadOverheadRecovery, async ({ services }) => {
  const recovery = await workedRecovery(services, { withDerivations: true });
  return workbookAnswer('overhead-recovery', overheadWorkbook(recovery, await workbookAbout(services)));
});
