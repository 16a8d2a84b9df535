import { Prisma } from '../../generated/prisma/client.ts';

/**
 * Articles whose price a list changes: a line that differs from the one before it, a line that is the first of its kind,
 * and what a complete list does not name any more.
 */
function changedItems(listId: string): Prisma.Sql {
  return Prisma.sql`
    select line."itemId" as id
    from "PriceLine" line join "PriceList" list on list.id = line."listId"
    where list.id = ${listId} and not exists (
      select 1 from (
        select old.*, earlier.currency, earlier."taxIncluded", earlier."taxRate", earlier."taxRecoverable"
        from "PriceLine" old join "PriceList" earlier on earlier.id = old."listId"
        where old."itemId" = line."itemId" and old.unit = line.unit and old."breakFrom" = line."breakFrom"
          and (earlier."validFrom", earlier."createdAt", earlier.id) < (list."validFrom", list."createdAt", list.id)
        order by earlier."validFrom" desc, earlier."createdAt" desc, earlier.id desc limit 1
      ) as before
      where before.amount = line.amount and before.currency = list.currency
        and before."breakKind" = line."breakKind" and before."taxIncluded" = list."taxIncluded"
        and before."taxRate" = list."taxRate" and before."taxRecoverable" = list."taxRecoverable"
        and before."packSize" is not distinct from line."packSize"
        and before."minimumQuantity" is not distinct from line."minimumQuantity")
    union
    select item.id from "SupplierItem" item join "PriceList" list on list."supplierId" = item."supplierId"
    where list.id = ${listId} and list."isComplete" and not exists (
      select 1 from "PriceLine" line where line."itemId" = item.id and line."listId" = list.id)`;
}

/** Sent quotes that hold on the day and were priced by a line of an earlier list whose article the list changes. */
function sentQuotes(listId: string, today: string): Prisma.Sql {
  return Prisma.sql`
    select distinct revision.id as "revisionId", null as "costSheetId"
    from (${changedItems(listId)}) as changed
      join "PriceLine" line on line."itemId" = changed.id
      join "PriceList" old on old.id = line."listId"
      join "QuotePrice" price on price."lineId" = line.id
      join "QuoteRevision" revision on revision.id = price."revisionId"
      join "PriceList" list on list.id = ${listId}
    where revision.state = 'sent' and revision."validUntil" >= ${today}::date
      and (old."validFrom", old."createdAt", old.id) < (list."validFrom", list."createdAt", list.id)`;
}

/** Cost sheets whose prices are of the list's first day or later, and whose drawing names a material it prices. */
function costSheets(listId: string): Prisma.Sql {
  return Prisma.sql`
    with codes as materialized (
      select material.code, material.family
      from (${changedItems(listId)}) as changed
        join "SupplierItem" item on item.id = changed.id
        join "Material" material on material.id = item."materialId"
    ), named as materialized (
      select code as name from codes union select family from codes where family is not null
    )
    select null as "revisionId", sheet.id as "costSheetId"
    from "CostSheet" sheet
      join "Design" design on design.id = sheet."designId"
      join "DesignRevision" drawn on drawn."designId" = design.id
        and drawn.number = coalesce(sheet.revision, design.version)
      join "PriceList" list on list.id = ${listId}
    where (sheet."onDate" is null or sheet."onDate" >= list."validFrom") and exists (
      select 1 from jsonb_path_query(
        jsonb_build_array(drawn.bill, drawn.parameters, drawn.variants, sheet."parameterValues"),
        'strict $.** ? (@.type() == "string")') as text
      join named on named.name = text #>> '{}')`;
}

function insertRows(listId: string, run: number, touched: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`
    insert into "PriceImpactRow" (id, "listId", "revisionId", "costSheetId", run, "isWorked")
    select gen_random_uuid()::text, ${listId}, touched."revisionId", touched."costSheetId", ${run}, false
    from (${touched}) as touched`;
}

const AGAIN = Prisma.sql`do update set run = excluded.run, "isWorked" = false`;

/**
 * Notes what a list may touch as rows to be worked out, by the database alone: open quotes by the prices they rest on,
 * cost sheets by the materials their drawings name, drafts by their cost sheets.
 * @returns how many
 */
export async function findTouched(
  transaction: Prisma.TransactionClient,
  listId: string,
  { run, today }: { run: number; today: string },
): Promise<number> {
  await transaction.$executeRaw`
    ${insertRows(listId, run, sentQuotes(listId, today))} on conflict ("listId", "revisionId") ${AGAIN}`;
  await transaction.$executeRaw`
    ${insertRows(listId, run, costSheets(listId))} on conflict ("listId", "costSheetId") ${AGAIN}`;
  const drafts = Prisma.sql`
    select distinct revision.id as "revisionId", null as "costSheetId"
    from "QuoteRevision" revision
      cross join lateral jsonb_path_query(revision.draft, '$.lines[*].costSheetId') as sheet
      join "PriceImpactRow" touched on touched."costSheetId" = sheet #>> '{}'
    where revision.state = 'draft' and touched."listId" = ${listId} and touched.run = ${run}`;
  await transaction.$executeRaw`
    ${insertRows(listId, run, drafts)} on conflict ("listId", "revisionId") ${AGAIN}`;
  await transaction.priceImpactRow.deleteMany({ where: { listId, run: { lt: run }, isDecided: false } });
  return transaction.priceImpactRow.count({ where: { listId, run } });
}
