import { Prisma } from '../../generated/prisma/client.ts';
import type { ListTermsRecord } from './list-terms.ts';

export interface ListOrigin {
  readonly createdBy: string;
  readonly createdAt: Date;
  readonly sourceName: string;
  readonly sourceSha256: string;
}

/**
 * Ids of what comes with a list: a version 7 UUID may end in a counter (RFC 9562, 6.2), here the row of the file. They
 * rise, so that 50,000 rows fill an index from its end rather than all over.
 */
function idsOf(listId: string): Prisma.Sql {
  return Prisma.sql`left(${listId}, 24) || lpad(to_hex(given."rowNumber"), 12, '0')`;
}

/** One row for every article in the rows, with the material and the description that one of them gives. */
function articlesIn(rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    select named.code, named.description, named."rowNumber", material.id as "materialId"
    from (
      select distinct on (code) code, description, material, "rowNumber" from (${rows}) as given
      order by code, material is null, description = '', "rowNumber"
    ) as named
    left join "Material" material on material.code = named.material`;
}

/** A description or material that the rows leave out stays as it was. */
function changeArticles(supplierId: string, rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    update "SupplierItem" item set
      description = coalesce(nullif(given.description, ''), item.description),
      "materialId" = coalesce(given."materialId", item."materialId")
    from (${articlesIn(rows)}) as given
    where item."supplierId" = ${supplierId} and item.code = given.code
      and ((given.description <> '' and given.description <> item.description)
        or (given."materialId" is not null and given."materialId" is distinct from item."materialId"))`;
}

function writeArticles(listId: string, supplierId: string, rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    insert into "SupplierItem" (id, "supplierId", code, description, "materialId")
    select ${idsOf(listId)}, ${supplierId}, given.code, given.description, given."materialId"
    from (${articlesIn(rows)}) as given
    where not exists (
      select 1 from "SupplierItem" known where known."supplierId" = ${supplierId} and known.code = given.code)`;
}

function writeLines(listId: string, supplierId: string, rows: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    insert into "PriceLine" (id, "listId", "itemId", unit, "breakFrom", "breakKind", amount, "packSize",
      "minimumQuantity", "leadDays", "rowNumber")
    select ${idsOf(listId)}, ${listId}, item.id, given.unit, given."breakFrom", given."breakKind", given.amount,
      given."packSize", given."minimumQuantity", given."leadDays", given."rowNumber"
    from (${rows}) as given
    join "SupplierItem" item on item."supplierId" = ${supplierId} and item.code = given.code`;
}

/**
 * Writes a list with all its lines; the database does the work, so that 50,000 rows never pass through here.
 * The caller's transaction makes it whole or not at all.
 * @param rows as priced-rows.ts gives them
 * @returns the id of the list
 */
export async function writePriceList(
  transaction: Prisma.TransactionClient,
  terms: ListTermsRecord,
  origin: ListOrigin,
  rows: Prisma.Sql,
): Promise<string> {
  // Lists of one supplier follow each other: two at once would not know which came last, or which articles are new.
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
  await transaction.$executeRaw(changeArticles(terms.supplierId, rows));
  await transaction.$executeRaw(writeArticles(id, terms.supplierId, rows));
  await transaction.$executeRaw(writeLines(id, terms.supplierId, rows));
  return id;
}
