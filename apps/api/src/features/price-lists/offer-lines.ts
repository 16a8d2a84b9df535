import { Prisma } from '../../generated/prisma/client.ts';
import type { DatabaseAccess } from './database-access.ts';

/** One line of a list with what its list and supplier say of it; decimals as text, days as YYYY-MM-DD. */
export interface OfferLine {
  id: string;
  listId: string;
  listName: string;
  listDate: string;
  validTo: string | null;
  currency: string;
  taxIncluded: boolean;
  taxRate: string;
  taxRecoverable: string;
  supplierId: string;
  supplier: string;
  supplierName: string;
  code: string;
  material: string;
  unit: string;
  breakFrom: string;
  breakKind: string;
  amount: string;
  packSize: string | null;
  minimumQuantity: string | null;
  leadDays: number | null;
  row: number;
}

/** A list that says it names everything its supplier sells. */
export interface CompleteList {
  id: string;
  supplierId: string;
  date: string;
}

/** A list that is read as if it had never come. */
export interface LeftOut {
  readonly without?: string;
}

function but({ without }: LeftOut, listId: Prisma.Sql): Prisma.Sql {
  return without === undefined ? Prisma.empty : Prisma.sql`and ${listId} <> ${without}`;
}

/** All lines that price the materials on lists dated on or before the day, the oldest list first. */
export function readOfferLines(
  database: DatabaseAccess,
  materialCodes: readonly string[],
  onDate: string,
  leftOut: LeftOut,
): Promise<OfferLine[]> {
  return database.$queryRaw<OfferLine[]>`
    select line.id, list.id as "listId", list.name as "listName",
      to_char(list."validFrom", 'YYYY-MM-DD') as "listDate", to_char(list."validTo", 'YYYY-MM-DD') as "validTo",
      list.currency, list."taxIncluded", trim_scale(list."taxRate")::text as "taxRate",
      trim_scale(list."taxRecoverable")::text as "taxRecoverable",
      supplier.id as "supplierId", supplier.code as supplier, supplier.name as "supplierName",
      item.code, material.code as material, line.unit,
      trim_scale(line."breakFrom")::text as "breakFrom", line."breakKind", trim_scale(line.amount)::text as amount,
      trim_scale(line."packSize")::text as "packSize",
      trim_scale(line."minimumQuantity")::text as "minimumQuantity",
      coalesce(line."leadDays", supplier."leadDays") as "leadDays", line."rowNumber" as row
    from "Material" material
      join "SupplierItem" item on item."materialId" = material.id
      join "PriceLine" line on line."itemId" = item.id
      join "PriceList" list on list.id = line."listId"
      join "Supplier" supplier on supplier.id = list."supplierId"
    where material.code = any(${[...materialCodes]}) and list."validFrom" <= ${onDate}::date
      ${but(leftOut, Prisma.sql`list.id`)}
    order by list."validFrom", list."createdAt", list.id, line."breakFrom"`;
}

/** The suppliers' complete lists dated on or before the day, in the order in which lists follow each other. */
export function readCompleteLists(
  database: DatabaseAccess,
  supplierIds: readonly string[],
  onDate: string,
  leftOut: LeftOut,
): Promise<CompleteList[]> {
  if (supplierIds.length === 0) return Promise.resolve([]);
  return database.$queryRaw<CompleteList[]>`
    select id, "supplierId", to_char("validFrom", 'YYYY-MM-DD') as date from "PriceList"
    where "isComplete" and "supplierId" in (${Prisma.join([...supplierIds])}) and "validFrom" <= ${onDate}::date
      ${but(leftOut, Prisma.sql`id`)}
    order by "validFrom", "createdAt", id`;
}

/** The order in which a supplier's lists follow each other, by id: later dates after earlier, corrections last. */
export async function readListOrder(
  database: DatabaseAccess,
  supplierIds: readonly string[],
  onDate: string,
  leftOut: LeftOut,
): Promise<Map<string, number>> {
  if (supplierIds.length === 0) return new Map();
  const rows = await database.$queryRaw<{ id: string }[]>`
    select id from "PriceList"
    where "supplierId" in (${Prisma.join([...supplierIds])}) and "validFrom" <= ${onDate}::date
      ${but(leftOut, Prisma.sql`id`)}
    order by "validFrom", "createdAt", id`;
  return new Map(rows.map(({ id }, index) => [id, index]));
}
