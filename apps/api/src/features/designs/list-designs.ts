import { listDesigns } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { billOf, overallSizeOf, pageOfDesigns } from './design-records.ts';

export const answerListDesigns = handle(listDesigns, async ({ query, services }) => {
  const after = readCursor(query.cursor, 1)?.[0];
  const rows = await pageOfDesigns(services.database, after, query.limit + 1);
  return toPage(
    rows,
    query.limit,
    (row) => [row.code],
    (row) => {
      const bill = billOf(row.revisions[0]);
      return {
        id: row.id,
        code: row.code,
        name: row.name,
        description: row.description,
        unitSystem: row.unitSystem === 'imperial' ? ('imperial' as const) : ('metric' as const),
        overallSize: overallSizeOf(row),
        isDemo: row.isDemo,
        updatedAt: row.updatedAt.toISOString(),
        parts: bill.parts.length,
        operations: bill.operations.length,
      };
    },
  );
});
