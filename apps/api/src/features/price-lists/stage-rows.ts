import {
  type CurrentPrice,
  comparePrice,
  type PriceChange,
  type PriceRow,
  type PriceRowContext,
  priceIdentity,
  type RowProblem,
  readPriceRow,
} from '@scantling/costing';
import type { TableRow } from '@scantling/renderers';
import { Prisma } from '../../generated/prisma/client.ts';
import { currentPrices } from './current-prices.ts';
import type { DatabaseAccess } from './database-access.ts';
import type { ListTermsRecord } from './list-terms.ts';
import type { StagedData } from './price-import-records.ts';

interface StagedRow {
  rowNumber: number;
  change: PriceChange;
  data: StagedData;
  problems?: readonly RowProblem[];
}

/** A price as `currentPrices` reads it: what a line leaves open is null. */
type CurrentRow = Omit<CurrentPrice, 'material' | 'packSize' | 'minimumQuantity' | 'leadDays'> & {
  material: string | null;
  packSize: string | null;
  minimumQuantity: string | null;
  leadDays: number | null;
};

function toCurrent({ material, packSize, minimumQuantity, leadDays, ...row }: CurrentRow): CurrentPrice {
  return {
    ...row,
    ...(material === null ? {} : { material }),
    ...(packSize === null ? {} : { packSize }),
    ...(minimumQuantity === null ? {} : { minimumQuantity }),
    ...(leadDays === null ? {} : { leadDays }),
  };
}

/** Reads rows, compares them with the prices in force and stages them, batch by batch. */
export class RowStager {
  private readonly places = new Map<string, number>();

  constructor(
    private readonly database: DatabaseAccess,
    private readonly importId: string,
    private readonly terms: ListTermsRecord,
    private readonly context: PriceRowContext,
  ) {}

  async stage(rows: readonly TableRow[]): Promise<void> {
    const read = rows.map((row) => this.read(row));
    const codes = read.flatMap((one) => ('row' in one ? [one.row.code] : []));
    const current = await this.currentOf([...new Set(codes)]);
    const staged = read.map((one): StagedRow => {
      const { number, cells } = one.source;
      if ('problems' in one)
        return { rowNumber: number, change: 'unreadable', data: { cells }, problems: one.problems };
      const before = current.get(priceIdentity(one.row));
      const change = comparePrice(one.row, this.terms, before);
      return { rowNumber: number, change, data: { row: one.row, before: before?.amount ?? null } };
    });
    await this.database.$executeRaw`
      insert into "FileImportRow" ("importId", "rowNumber", change, data, problems)
      select ${this.importId}, (staged->>'rowNumber')::int, staged->>'change', staged->'data', staged->'problems'
      from jsonb_array_elements(${JSON.stringify(staged)}::jsonb) as staged`;
  }

  /** Once all rows are staged: what a complete list does not name any more. */
  async stageGone(): Promise<void> {
    if (!this.terms.isComplete) return;
    await this.database.$executeRaw(Prisma.sql`
      insert into "FileImportRow" ("importId", "rowNumber", change, data)
      select ${this.importId}, old."rowNumber", 'gone', jsonb_build_object('before', old.amount, 'row',
        jsonb_strip_nulls(jsonb_build_object('code', old.code, 'description', old.description,
          'material', old.material, 'unit', old.unit, 'amount', old.amount, 'from', old."from",
          'breakKind', old."breakKind", 'packSize', old."packSize", 'minimumQuantity', old."minimumQuantity",
          'leadDays', old."leadDays")))
      from (${currentPrices(this.terms.supplierId, this.terms.validFrom)}) as old
      where not exists (
        select 1 from "FileImportRow" staged
        where staged."importId" = ${this.importId} and staged.change <> 'unreadable'
          and staged.data->'row'->>'code' = old.code and staged.data->'row'->>'unit' = old.unit
          and staged.data->'row'->>'from' = old."from")`);
  }

  private read(
    source: TableRow,
  ): { source: TableRow } & ({ row: PriceRow } | { problems: readonly RowProblem[] }) {
    const read = readPriceRow(source.cells, this.context);
    if ('problems' in read) return { source, ...read };
    const identity = priceIdentity(read.row);
    const first = this.places.get(identity);
    if (first === undefined) {
      this.places.set(identity, source.number);
      return { source, ...read };
    }
    const message = `row ${first} has the same code, unit and break`;
    return { source, problems: [{ column: 'code', message, mend: 'Keep one of the two rows.' }] };
  }

  private async currentOf(codes: readonly string[]): Promise<Map<string, CurrentPrice>> {
    if (codes.length === 0) return new Map();
    const { supplierId, validFrom } = this.terms;
    const rows = await this.database.$queryRaw<CurrentRow[]>(currentPrices(supplierId, validFrom, codes));
    return new Map(rows.map((row) => [priceIdentity(row), toCurrent(row)]));
  }
}
