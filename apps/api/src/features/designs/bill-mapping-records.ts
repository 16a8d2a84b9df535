import { billMappingSchema } from '@scantling/contracts';
import type { BillMapping } from '@scantling/costing';
import type { Database } from '../../database/connect.ts';

// One for the workshop: bills come from its own drawings, not from suppliers.
const IDENTITY = { kind: 'bill', supplierId: '' } as const;

/** How the columns of a bill file were matched last time. */
export async function readRememberedBillMapping(database: Database): Promise<BillMapping | undefined> {
  const kept = await database.importMapping.findUnique({ where: { kind_supplierId: IDENTITY } });
  return kept === null ? undefined : billMappingSchema.safeParse(kept.mapping).data;
}

export async function rememberBillMapping(database: Database, mapping: BillMapping): Promise<void> {
  const kept = billMappingSchema.parse(mapping);
  await database.importMapping.upsert({
    where: { kind_supplierId: IDENTITY },
    create: { ...IDENTITY, mapping: kept },
    update: { mapping: kept },
  });
}
