import {
  resultIds,
  type SheetChanges,
  type sheetChangesBody,
  toWorkedCostSheet,
  type WorkedCostSheet,
} from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { notFound } from '../../problems/request-problem.ts';
import { actorKey, type KnownActor } from '../../sign-in/actor.ts';
import { requireUpdated } from '../../version-match.ts';
import { type CostSheetAnswer, findCostSheet, toData } from '../cost-sheets/cost-sheet-records.ts';
import { gatherInput } from '../cost-sheets/gather-input.ts';
import { askedChanges } from './asked-changes.ts';
import { afterChange, draftQuotesWith, restingSheets } from './resting-sheets.ts';
import { writeEverywhere } from './write-everywhere.ts';
import { isOfSheet, type SheetValues, valuesHere } from './write-here.ts';

type Access = Prisma.TransactionClient;

/** Costing dozens of other sheets twice takes longer than a request's usual transaction has. */
const LONGEST_MS = 60_000;

export interface Asked {
  readonly id: string;
  /** The version of the sheet that the asker has read; null takes any. */
  readonly version: number | null;
  readonly body: z.output<typeof sheetChangesBody>;
  readonly actor: KnownActor;
  readonly now: Date;
}

async function readSheet(transaction: Access, id: string): Promise<CostSheetAnswer> {
  const sheet = await findCostSheet(transaction, id);
  if (sheet === null) throw notFound('cost sheet');
  return sheet;
}

async function worked(transaction: Access, sheet: CostSheetAnswer, today: string): Promise<WorkedCostSheet> {
  return toWorkedCostSheet(costSheet(await gatherInput(transaction, sheet, today)), {
    withDerivations: true,
  });
}

/** Keeps a sheet's own values. @throws RequestProblem version-stale, input-invalid where a choice cannot be made */
export async function keepOnSheet(
  transaction: Access,
  sheet: CostSheetAnswer,
  version: number,
  values: SheetValues,
): Promise<CostSheetAnswer> {
  const { id, title, designId, revision, variant, clientId, basis, onDate, quantities } = sheet;
  const { terms, parameterValues, ownValues } = values;
  const fields = { title, designId, revision, variant, clientId, basis, onDate, quantities };
  const data = await toData(transaction, { ...fields, terms, parameterValues });
  const { count } = await transaction.costSheet.updateMany({
    where: { id, version },
    data: { ...data, ownValues: ownValues.map((own) => ({ ...own })), version: version + 1 },
  });
  await requireUpdated(count, 'cost sheet', async () => true);
  return readSheet(transaction, id);
}

/** Every result that both have, or one of them. */
function comparedColumns(before: WorkedCostSheet, after: WorkedCostSheet): SheetChanges['columns'] {
  return after.columns.map((column) => {
    const old = before.columns.find(({ quantity }) => quantity === column.quantity);
    const was = new Map(
      old && resultIds(old).map(({ name, id }) => [name, before.figures[id]?.value ?? null]),
    );
    const results = resultIds(column).map(({ name, id }) => ({
      name,
      was: was.get(name) ?? null,
      now: after.figures[id]?.value ?? null,
    }));
    return { quantity: column.quantity, results };
  });
}

/**
 * Takes values over and says what came of it, all within one transaction.
 * @throws RequestProblem input-invalid, version-stale, not-found; CostingInputError where the sheet cannot be worked out with them
 */
async function carryOut(
  transaction: Access,
  { id, version, body, actor, now }: Asked,
): Promise<SheetChanges> {
  const today = now.toISOString().slice(0, 10);
  const sheet = await readSheet(transaction, id);
  const before = await worked(transaction, sheet, today);
  const changes = askedChanges(before.figures, body);
  const outside = changes.filter((change) => !isOfSheet(change));
  const resting = await restingSheets(
    transaction,
    sheet,
    outside.map(({ leaf, home }) => ({ leaf: leaf.id, home })),
    today,
  );
  const here = valuesHere(sheet, changes, { by: actor.name, on: today });
  const kept = await keepOnSheet(transaction, sheet, version ?? sheet.version, here.values);
  const origin = {
    onDate: sheet.onDate ?? today,
    title: sheet.title,
    createdBy: actorKey(actor),
    now,
  };
  const everywhere = await writeEverywhere(transaction, outside, {
    sheet,
    currency: before.currency,
    origin,
    actorId: actor.id,
  });
  const after = await worked(transaction, kept, today);
  const otherSheets = await afterChange(transaction, resting, today);
  return {
    sheet: await readSheet(transaction, id),
    currency: before.currency,
    written: changes.map((change) => {
      const place = here.places.get(change) ?? everywhere.get(change);
      const { leaf, value, reach } = change;
      return {
        leaf: leaf.id,
        label: leaf.label,
        was: leaf.value,
        now: value,
        reach,
        place: place?.place ?? '',
        record: place?.record ?? null,
      };
    }),
    columns: comparedColumns(before, after),
    otherSheets,
    draftQuotes: await draftQuotesWith(transaction, [id, ...otherSheets.map((other) => other.id)]),
  };
}

/** Takes values over, all or nothing. */
export function takeOver(database: Database, asked: Asked): Promise<SheetChanges> {
  return database.$transaction((transaction) => carryOut(transaction, asked), { timeout: LONGEST_MS });
}

/** Carries the answer out of a transaction that is put back. */
class PutBack extends Error {
  constructor(readonly outcome: SheetChanges) {
    super('put back on purpose');
  }
}

/** What taking values over would come to: it is done, and put back. */
export async function foresee(database: Database, asked: Asked): Promise<SheetChanges> {
  try {
    return await database.$transaction(
      async (transaction) => {
        throw new PutBack(await carryOut(transaction, asked));
      },
      { timeout: LONGEST_MS },
    );
  } catch (error) {
    if (error instanceof PutBack) return error.outcome;
    throw error;
  }
}
