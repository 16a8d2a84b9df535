import { currencySchema, listMaterialPrices } from '@scantling/contracts';
import type { Database } from '../../database/connect.ts';
import { handle } from '../../handle.ts';
import { readCursor, toPage } from '../../pages/cursor.ts';
import { readDayAndId } from '../../pages/day-cursor.ts';
import { notFound } from '../../problems/request-problem.ts';
import { dayText, toPriceLine, WITH_ITEM } from './price-list-records.ts';

/** For each line the day of the next complete list of its supplier that does not name it, where there is one. */
async function endings(database: Database, lineIds: readonly string[]): Promise<Map<string, string>> {
  const rows = await database.$queryRaw<{ id: string; day: string }[]>`
    select line.id, to_char(min(later."validFrom"), 'YYYY-MM-DD') as day
    from "PriceLine" line
      join "PriceList" list on list.id = line."listId"
      join "PriceList" later on later."supplierId" = list."supplierId" and later."isComplete"
        and (later."validFrom", later."createdAt", later.id) > (list."validFrom", list."createdAt", list.id)
    where line.id = any(${[...lineIds]}) and not exists (
      select 1 from "PriceLine" other where other."listId" = later.id and other."itemId" = line."itemId"
        and other.unit = line.unit and other."breakFrom" = line."breakFrom")
    group by line.id`;
  return new Map(rows.map(({ id, day }) => [id, day]));
}

export const answerListMaterialPrices = handle(listMaterialPrices, async ({ params, query, services }) => {
  const { database } = services;
  if ((await database.material.count({ where: { id: params.id } })) === 0) throw notFound('material');
  const after = readDayAndId(readCursor(query.cursor, 2));
  const older = after && {
    OR: [
      { list: { validFrom: { lt: after.day } } },
      { list: { validFrom: after.day }, id: { lt: after.id } },
    ],
  };
  const rows = await database.priceLine.findMany({
    where: { item: { materialId: params.id }, ...older },
    include: {
      ...WITH_ITEM,
      list: { include: { supplier: { select: { id: true, code: true, name: true } } } },
    },
    orderBy: [{ list: { validFrom: 'desc' } }, { id: 'desc' }],
    take: query.limit + 1,
  });
  const endedFrom = await endings(
    database,
    rows.map(({ id }) => id),
  );
  return toPage(
    rows,
    query.limit,
    (row) => [dayText(row.list.validFrom), row.id],
    ({ list, ...row }) => ({
      line: toPriceLine(row),
      list: {
        id: list.id,
        name: list.name,
        validFrom: dayText(list.validFrom),
        validTo: list.validTo === null ? null : dayText(list.validTo),
        currency: currencySchema.parse(list.currency),
        taxIncluded: list.taxIncluded,
      },
      supplier: list.supplier,
      endedFrom: endedFrom.get(row.id) ?? null,
    }),
  );
});
