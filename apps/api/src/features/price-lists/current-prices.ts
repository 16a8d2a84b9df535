import { Prisma } from '../../generated/prisma/client.ts';

/**
 * The supplier's prices in force on a day, one row per code, unit and break: the newest list's line, unless that list
 * has run out or a later complete list does not name it.
 * @param codes a query of the supplier's article codes; all of them where none is given
 */
export function currentPrices(supplierId: string, onDate: string, codes?: Prisma.Sql): Prisma.Sql {
  const ofCodes = codes === undefined ? Prisma.empty : Prisma.sql`and item.code in (${codes})`;
  return Prisma.sql`
    select newest.* from (
      select distinct on (line."itemId", line.unit, line."breakFrom")
        item.code, item.description, material.code as material, line.unit, line.amount, line."breakFrom",
        line."breakKind", line."packSize", line."minimumQuantity", line."leadDays", line."rowNumber",
        list.currency, list."taxIncluded", list."taxRate", list."taxRecoverable",
        list."validFrom" as "listDay", list."createdAt" as "listMade", list.id as "listId", list."validTo" as "lastDay"
      from "SupplierItem" item
        join "PriceLine" line on line."itemId" = item.id
        join "PriceList" list on list.id = line."listId"
        left join "Material" material on material.id = item."materialId"
      where item."supplierId" = ${supplierId} and list."validFrom" <= ${onDate}::date ${ofCodes}
      order by line."itemId", line.unit, line."breakFrom", list."validFrom" desc, list."createdAt" desc, list.id desc
    ) as newest
    where (newest."lastDay" is null or newest."lastDay" >= ${onDate}::date)
      and not exists (
        select 1 from "PriceList" later
        where later."supplierId" = ${supplierId} and later."isComplete" and later."validFrom" <= ${onDate}::date
          and (later."validFrom", later."createdAt", later.id) > (newest."listDay", newest."listMade", newest."listId")
      )`;
}
