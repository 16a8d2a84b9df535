import { type AnswerOf, removeDemo as removeDemoContract } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import { handle } from '../../handle.ts';
import { createSetUpLink } from '../../sign-in/set-up-link.ts';
import { withDemoLock } from './demo-lock.ts';
import { removeRecords } from './remove-records.ts';

type RemovedDemo = AnswerOf<typeof removeDemoContract>;

/** Removes the demo in one step; own records and what they rest on stay. Where there is no demo nothing changes. */
export async function removeDemo(database: Database): Promise<RemovedDemo> {
  const answer = await withDemoLock(database, async (transaction) => {
    const { removed, kept, inventedName } = await removeRecords(transaction);
    const { designs, clients, materials, suppliers, grades, tools } = kept;
    return {
      removed,
      inventedName,
      kept: {
        designs: designs.length,
        clients: clients.length,
        materials: materials.length,
        suppliers: suppliers.length,
        grades: grades.length,
        tools: tools.length,
      },
    };
  });
  const link = await createSetUpLink(database);
  return { ...answer, setUpPath: link === undefined ? null : `/set-up#${link.token}` };
}

export const answerRemoveDemo = handle(removeDemoContract, ({ services }) => removeDemo(services.database));
