import type { PriceRow } from '@scantling/costing';
import { Prisma } from '../../generated/prisma/client.ts';
import type { ListTermsRecord } from './list-terms.ts';

/** Rows as the columns "rowNumber" and row (a PriceRow as jsonb), for the statements that write a list. */
export function rowsGiven(rows: readonly PriceRow[]): Prisma.Sql {
  return Prisma.sql`select place::int as "rowNumber", value as row
    from jsonb_array_elements(${JSON.stringify(rows)}::jsonb) with ordinality as given(value, place)`;
}

/** The readable rows of an import, in the same shape. */
export function rowsStaged(importId: string): Prisma.Sql {
  return Prisma.sql`select "rowNumber", data->'row' as row from "FileImportRow"
    where "importId" = ${importId} and change not in ('gone', 'unreadable')`;
}

export interface ListOrigin {
  readonly createdBy: string;
  readonly createdAt: Date;
  readonly sourceName: string;
  readonly sourceSha256: string;
}

/** Every supplier's article in the rows; a description or material that a row leaves out stays as it was. */
function writeItems(supplierId: string, rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    insert into "SupplierItem" (id, "supplierId", code, description, "materialId")
    select gen_random_uuid()::text, ${supplierId}, named.code, named.description, material.id
    from (
      select distinct on (row->>'code') row->>'code' as code, row->>'description' as description,
        row->>'material' as material
      from (${rows}) as given
      order by row->>'code', (row->>'material') is null, row->>'description' = '', "rowNumber"
    ) as named
    left join "Material" material on material.code = named.material
    on conflict ("supplierId", code) do update set
      description = case when excluded.description = '' then "SupplierItem".description else excluded.description end,
      "materialId" = coalesce(excluded."materialId", "SupplierItem"."materialId")`;
}

function writeLines(listId: string, supplierId: string, rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    insert into "PriceLine" (id, "listId", "itemId", unit, "breakFrom", "breakKind", amount, "packSize",
      "minimumQuantity", "leadDays", "rowNumber")
    select gen_random_uuid()::text, ${listId}, item.id, price.unit, price."from", price."breakKind", price.amount,
      price."packSize", price."minimumQuantity", price."leadDays", given."rowNumber"
    from (${rows}) as given
    cross join lateral jsonb_to_record(given.row) as price(code text, unit text, "from" numeric, "breakKind" text,
      amount numeric, "packSize" numeric, "minimumQuantity" numeric, "leadDays" int)
    join "SupplierItem" item on item."supplierId" = ${supplierId} and item.code = price.code`;
}

/**
 * Writes a list with all its lines; the database does the work, so that 50,000 rows never pass through here.
 * The caller's transaction makes it whole or not at all.
 * @returns the id of the list
 */
export async function writePriceList(
  transaction: Prisma.TransactionClient,
  terms: ListTermsRecord,
  origin: ListOrigin,
  rows: Prisma.Sql,
): Promise<string> {
  // Lists of one supplier follow each other: two at once would not know which came last.
  await transaction.$queryRaw`select id from "Supplier" where id = ${terms.supplierId} for update`;
  const { id } = await transaction.priceList.create({
    data: {
      ...terms,
      validFrom: new Date(terms.validFrom),
      validTo: terms.validTo === null ? null : new Date(terms.validTo),
      ...origin,
    },
    select: { id: true },
  });
  await transaction.$executeRaw(writeItems(terms.supplierId, rows));
  await transaction.$executeRaw(writeLines(id, terms.supplierId, rows));
  return id;
}
