import { workOutScenario } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findScenario } from './scenario-records.ts';
import { tryOnSheet } from './try-on-sheet.ts';

export const answerWorkOutScenario = handle(workOutScenario, async ({ params, query, services }) => {
  const { database, clock } = services;
  const { costSheetId, changes } = await findScenario(database, params.id);
  const asked = {
    id: costSheetId,
    changes: Object.fromEntries(changes.map(({ leaf, value }) => [leaf, value])),
    today: clock().toISOString().slice(0, 10),
  };
  return tryOnSheet(database, asked, { withDerivations: query.working });
});
