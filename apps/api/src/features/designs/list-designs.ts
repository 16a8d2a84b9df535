import { listDesigns } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { drawingOf, overallSizeOf, pageOfDesigns, unitSystemOf } from './design-records.ts';

export const answerListDesigns = handle(listDesigns, async ({ query, services }) => {
  const after = readCursor(query.cursor, 1)?.[0];
  const rows = await pageOfDesigns(services.database, after, query.limit + 1);
  return toPage(
    rows,
    query.limit,
    (row) => [row.code],
    (row) => {
      const { bill } = drawingOf(row.revisions[0]);
      return {
        id: row.id,
        code: row.code,
        name: row.name,
        description: row.description,
        unitSystem: unitSystemOf(row),
        overallSize: overallSizeOf(row),
        isDemo: row.isDemo,
        updatedAt: row.updatedAt.toISOString(),
        parts: bill.parts.length,
        operations: bill.operations.length,
        cover: row.pictures[0] ?? null,
      };
    },
  );
});
