import { workOutWhatIf } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { tryOnSheet } from './try-on-sheet.ts';

export const answerWorkOutWhatIf = handle(workOutWhatIf, ({ params, query, body, services }) => {
  const today = services.clock().toISOString().slice(0, 10);
  const asked = { id: params.id, changes: body.changes, today };
  return tryOnSheet(services.database, asked, { withDerivations: query.working });
});
