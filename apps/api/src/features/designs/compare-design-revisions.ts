import { compareDesignRevisions } from '@scantling/contracts';
import { compareDesigns } from '@scantling/costing';
import { handle } from '../../handle.ts';
import { requireRevision } from './revision-records.ts';

export const answerCompareDesignRevisions = handle(
  compareDesignRevisions,
  async ({ params: { id }, query: { from, to }, services: { database } }) => {
    const [before, after] = await Promise.all([
      requireRevision(database, id, from),
      requireRevision(database, id, to),
    ]);
    const changes = compareDesigns(before.drawing, after.drawing);
    return { from, to, changes: changes.map((change) => ({ ...change, fields: [...change.fields] })) };
  },
);
