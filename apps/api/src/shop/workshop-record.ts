import { currencySchema, type Workshop, workshopSettingsSchema } from '@scantling/contracts';

import type { Prisma, Workshop as WorkshopRow } from '../generated/prisma/client.ts';
import { RequestProblem } from '../problems/request-problem.ts';

export function toWorkshop(row: WorkshopRow): Workshop {
  return {
    name: row.name,
    currency: currencySchema.parse(row.currency),
    unitSystem: row.unitSystem === 'imperial' ? 'imperial' : 'metric',
    // Settings that came into the program after the record was written have what a workshop starts with.
    settings: workshopSettingsSchema.parse(row.settings),
    version: row.version,
  };
}

/** The one workshop of this installation. @throws RequestProblem not-found before it is set up */
export async function readWorkshop(database: Prisma.TransactionClient): Promise<Workshop> {
  const row = await database.workshop.findUnique({ where: { id: 1 } });
  if (row === null)
    throw new RequestProblem('not-found', { detail: 'There is no workshop yet: set it up first.' });
  return toWorkshop(row);
}
