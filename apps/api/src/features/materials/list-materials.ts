import { listMaterials } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { materialPage, toMaterial } from './material-records.ts';

export const answerListMaterials = handle(listMaterials, async ({ query, services }) => {
  const { limit, search } = query;
  const after = readCursor(query.cursor, 1)?.[0];
  const rows = await materialPage(services.database, { limit, after, search, form: query.form });
  return toPage(rows, limit, (row) => [row.code], toMaterial);
});
