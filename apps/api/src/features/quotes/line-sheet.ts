import { quoteDraftSchema, toWorkedCostSheet, type WorkedCostSheet } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import { CostingRecords } from '../cost-sheets/costing-records.ts';
import { costLines } from './cost-lines.ts';
import { readFrozenWorking, withWorking } from './frozen-working.ts';

interface LineSheet {
  readonly title: string;
  readonly worked: WorkedCostSheet;
  /** What bare lengths of its design are in. */
  readonly unit: 'mm' | 'in';
  /** Kept from when the quote was sent; never worked out again. */
  readonly isFrozen: boolean;
}

/** The cost sheet behind a line of a quote. @throws RequestProblem not-found */
export async function lineSheet(
  database: Prisma.TransactionClient,
  { id, lineId }: { id: string; lineId: string },
  today: string,
  options: { withDerivations: boolean },
): Promise<LineSheet> {
  const row = await database.quoteRevision.findUnique({ where: { id } });
  if (row === null) throw notFound('revision of a quote');
  if (row.working !== null) {
    const kept = readFrozenWorking(row.working).sheets[lineId];
    if (kept === undefined) throw notFound('line with a cost sheet');
    const { ask, unit } = kept;
    return {
      title: ask.title,
      worked: withWorking(kept.worked, options.withDerivations),
      unit,
      isFrozen: true,
    };
  }
  const lines = quoteDraftSchema.parse(row.draft).lines.filter((line) => line.id === lineId);
  const [costed] = await costLines(new CostingRecords(database, today), lines);
  if (costed === undefined) throw notFound('line with a cost sheet');
  const { ask, sheet } = costed;
  return {
    title: ask.title,
    worked: toWorkedCostSheet(sheet, options),
    unit: sheet.input.lengthUnit ?? 'mm',
    isFrozen: false,
  };
}
