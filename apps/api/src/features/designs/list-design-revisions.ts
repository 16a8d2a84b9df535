import { listDesignRevisions } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { notFound } from '../../problems/request-problem.ts';
import { pageOfRevisions } from './revision-records.ts';

export const answerListDesignRevisions = handle(
  listDesignRevisions,
  async ({ params: { id }, query, services: { database } }) => {
    if ((await database.design.count({ where: { id } })) === 0) throw notFound('design');
    const before = readCursor(query.cursor, 1)?.map(Number)[0];
    const rows = await pageOfRevisions(database, id, before, query.limit + 1);
    return toPage(
      rows,
      query.limit,
      (row) => [String(row.number)],
      (row) => row,
    );
  },
);
