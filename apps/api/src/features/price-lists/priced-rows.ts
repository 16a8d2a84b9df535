import type { PriceRow } from '@scantling/costing';
import { Prisma } from '../../generated/prisma/client.ts';

/** A price with the line of the file, or the place in the request, it was read from. */
export interface NumberedRow {
  readonly number: number;
  readonly row: PriceRow;
}

// The separator that ASCII has for the parts of a record; in a text it says nothing.
const BETWEEN = '\u001f';

/**
 * Prices as a set of rows for the statements that stage, compare and write them. Each column is one text that the
 * database takes apart: many times quicker than one value at a time.
 */
export function rowsGiven(rows: readonly NumberedRow[]): Prisma.Sql {
  const column = (of: (row: PriceRow) => string | undefined) =>
    Prisma.sql`string_to_array(${rows.map(({ row }) => (of(row) ?? '').replaceAll(BETWEEN, ' ')).join(BETWEEN)}, ${BETWEEN}, '')`;
  const numbers = rows.map(({ number }) => number).join(BETWEEN);
  return Prisma.sql`
    select given."rowNumber"::int, given.code, coalesce(given.description, '') as description, given.material,
      given.unit, given.amount::numeric, given."breakFrom"::numeric, given."breakKind",
      given."packSize"::numeric, given."minimumQuantity"::numeric, given."leadDays"::int
    from unnest(string_to_array(${numbers}, ${BETWEEN}), ${column(({ code }) => code)},
      ${column(({ description }) => description)}, ${column(({ material }) => material)},
      ${column(({ unit }) => unit)}, ${column(({ amount }) => amount)}, ${column(({ from }) => from)},
      ${column(({ breakKind }) => breakKind)}, ${column(({ packSize }) => packSize)},
      ${column(({ minimumQuantity }) => minimumQuantity)}, ${column(({ leadDays }) => leadDays?.toString())}
    ) as given("rowNumber", code, description, material, unit, amount, "breakFrom", "breakKind", "packSize",
      "minimumQuantity", "leadDays")`;
}

/** The readable rows of an import, in the same columns. */
export function rowsStaged(importId: string): Prisma.Sql {
  return Prisma.sql`
    select "rowNumber", code, description, material, unit, amount, "breakFrom", "breakKind", "packSize",
      "minimumQuantity", "leadDays"
    from "FileImportRow" where "importId" = ${importId} and change not in ('gone', 'unreadable')`;
}
