import type { RowProblem } from '@scantling/costing';
import { Prisma } from '../../generated/prisma/client.ts';
import { currentPrices } from './current-prices.ts';
import type { DatabaseAccess } from './database-access.ts';
import type { ListTermsRecord } from './list-terms.ts';
import { type NumberedRow, rowsGiven } from './priced-rows.ts';

const PRICE_COLUMNS = Prisma.sql`code, description, material, unit, amount, "breakFrom", "breakKind", "packSize",
  "minimumQuantity", "leadDays"`;

/**
 * What a row does to the price of the same code, unit and break in force until now. new: nothing was asked for it.
 * dearer, cheaper: the same terms, another amount. changed: other terms (currency, tax, kind of break, pack, minimum,
 * lead time, material), so that amounts alone do not compare; a material the row does not name stays as it is.
 */
function changeOf(terms: ListTermsRecord): Prisma.Sql {
  return Prisma.sql`case
    when old.code is null then 'new'
    when old.currency <> ${terms.currency} or old."taxIncluded" <> ${terms.taxIncluded}
      or old."taxRate" <> ${terms.taxRate}::numeric or old."taxRecoverable" <> ${terms.taxRecoverable}::numeric
      or old."breakKind" <> given."breakKind" then 'changed'
    when given.amount > old.amount then 'dearer'
    when given.amount < old.amount then 'cheaper'
    when given."packSize" is distinct from old."packSize"
      or given."minimumQuantity" is distinct from old."minimumQuantity"
      or given."leadDays" is distinct from old."leadDays"
      or (given.material is not null and given.material is distinct from old.material) then 'changed'
    else 'unchanged' end`;
}

/** Stages prices read from a file, each compared with the one in force; the database compares, batch by batch. */
export function stagePrices(
  database: DatabaseAccess,
  importId: string,
  terms: ListTermsRecord,
  rows: readonly NumberedRow[],
) {
  const codes = Prisma.sql`select code from given`;
  return database.$executeRaw`
    with given as materialized (${rowsGiven(rows)})
    insert into "FileImportRow" ("importId", "rowNumber", change, ${PRICE_COLUMNS}, before, "beforeCurrency")
    select ${importId}, given."rowNumber", ${changeOf(terms)}, given.code, given.description, given.material,
      given.unit, given.amount, given."breakFrom", given."breakKind", given."packSize", given."minimumQuantity",
      given."leadDays", old.amount, old.currency
    from given left join (${currentPrices(terms.supplierId, terms.validFrom, codes)}) as old
      on old.code = given.code and old.unit = given.unit and old."breakFrom" = given."breakFrom"`;
}

/** A row as it stands in the file, with everything that is wrong with it. */
export interface UnreadableRow {
  readonly number: number;
  readonly cells: readonly string[];
  readonly problems: readonly RowProblem[];
}

export function stageUnreadable(database: DatabaseAccess, importId: string, rows: readonly UnreadableRow[]) {
  return database.$executeRaw`
    insert into "FileImportRow" ("importId", "rowNumber", change, cells, problems)
    select ${importId}, (staged->>'number')::int, 'unreadable',
      array(select jsonb_array_elements_text(staged->'cells')), staged->'problems'
    from jsonb_array_elements(${JSON.stringify(rows)}::jsonb) as staged`;
}

/** Once all rows are staged: what a complete list does not name any more. */
export function stageGone(database: DatabaseAccess, importId: string, terms: ListTermsRecord) {
  return database.$executeRaw`
    insert into "FileImportRow" ("importId", "rowNumber", change, ${PRICE_COLUMNS}, before, "beforeCurrency")
    select ${importId}, old."rowNumber", 'gone', old.code, old.description, old.material, old.unit, old.amount,
      old."breakFrom", old."breakKind", old."packSize", old."minimumQuantity", old."leadDays", old.amount, old.currency
    from (${currentPrices(terms.supplierId, terms.validFrom)}) as old
    where not exists (
      select 1 from "FileImportRow" staged
      where staged."importId" = ${importId} and staged.change <> 'unreadable' and staged.code = old.code
        and staged.unit = old.unit and staged."breakFrom" = old."breakFrom")`;
}
