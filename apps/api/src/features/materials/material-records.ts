import { finishFields, type Material, materialFields } from '@scantling/contracts';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import { type Material as MaterialRow, Prisma } from '../../generated/prisma/client.ts';
import { alreadyTaken } from '../../problems/already-taken.ts';
import { fieldProblem, notFound, RequestProblem } from '../../problems/request-problem.ts';
import { type RecordVersion, requireUpdated } from '../../version-match.ts';

type Given = z.output<typeof materialFields>;

export function toMaterial(row: MaterialRow): Material {
  const text = (value: Prisma.Decimal | null) => value?.toFixed() ?? null;
  const { id, code, name, family, species, grade, quarter, preferredSupplierId, notes, isDemo, version } =
    row;
  return {
    id,
    code,
    name,
    form: materialFields.shape.form.parse(row.form),
    family,
    species,
    grade,
    quarter,
    nominalThicknessMm: text(row.nominalThicknessMm),
    surfacedThicknessMm: text(row.surfacedThicknessMm),
    thicknessMm: text(row.thicknessMm),
    widthMm: text(row.widthMm),
    lengthMm: text(row.lengthMm),
    densityKgM3: text(row.densityKgM3),
    yieldFactor: text(row.yieldFactor),
    offcutValueShare: text(row.offcutValueShare),
    packContent: text(row.packContent),
    boardContent: text(row.boardContent),
    finish: row.finish === null ? null : finishFields.parse(row.finish),
    preferredSupplierId,
    notes,
    isDemo,
    version,
  };
}

/** Materials by code after the one named by the cursor. */
export function materialPage(
  database: Database,
  wanted: { limit: number; after: string | undefined; search: string | undefined; form: string | undefined },
): Promise<MaterialRow[]> {
  const { limit, after, search, form } = wanted;
  const part = { contains: search ?? '', mode: 'insensitive' } as const;
  return database.material.findMany({
    where: {
      ...(after === undefined ? {} : { code: { gt: after } }),
      ...(form === undefined ? {} : { form }),
      ...(search === undefined ? {} : { OR: [{ code: part }, { name: part }, { family: part }] }),
    },
    orderBy: { code: 'asc' },
    take: limit + 1,
  });
}

/** @throws RequestProblem not-found */
export async function findMaterial(database: Prisma.TransactionClient, id: string): Promise<Material> {
  const row = await database.material.findUnique({ where: { id } });
  if (row === null) throw notFound('material');
  return toMaterial(row);
}

async function check(database: Prisma.TransactionClient, given: Given, id?: string): Promise<void> {
  const known = await database.material.findUnique({ where: { code: given.code }, select: { id: true } });
  if (known !== null && known.id !== id) throw alreadyTaken('code', given.code);
  const { preferredSupplierId, nominalThicknessMm, surfacedThicknessMm } = given;
  if (
    preferredSupplierId !== null &&
    (await database.supplier.count({ where: { id: preferredSupplierId } })) === 0
  )
    throw fieldProblem(
      'preferredSupplierId',
      'is no supplier',
      'Choose a supplier that is entered, or null.',
    );
  if (
    nominalThicknessMm !== null &&
    surfacedThicknessMm !== null &&
    new Prisma.Decimal(surfacedThicknessMm).gt(nominalThicknessMm)
  )
    throw fieldProblem(
      'surfacedThicknessMm',
      'is more than the rough thickness',
      'Enter what is left once both faces are planed.',
    );
}

function toData(given: Given) {
  return { ...given, finish: given.finish ?? Prisma.DbNull };
}

/** @throws RequestProblem already-exists, input-invalid */
export async function addMaterial(database: Database, given: Given): Promise<Material> {
  await check(database, given);
  return toMaterial(await database.material.create({ data: toData(given) }));
}

/** @throws RequestProblem version-stale, not-found, already-exists, input-invalid */
export function changeMaterial(database: Database, where: RecordVersion, given: Given): Promise<Material> {
  return database.$transaction((transaction) => changeMaterialIn(transaction, where, given));
}

/** The same within a transaction that changes more. */
export async function changeMaterialIn(
  transaction: Prisma.TransactionClient,
  where: RecordVersion,
  given: Given,
): Promise<Material> {
  await check(transaction, given, where.id);
  const data = { ...toData(given), version: { increment: 1 } };
  const { count } = await transaction.material.updateMany({ where, data });
  await requireUpdated(count, 'material', () => exists(transaction, where.id));
  return findMaterial(transaction, where.id);
}

/** @throws RequestProblem version-stale, not-found, still-in-use where a supplier's article is linked to it */
export async function dropMaterial(database: Database, where: RecordVersion): Promise<void> {
  await database.$transaction(async (transaction) => {
    await transaction.$queryRaw`select id from "Material" where id = ${where.id} for update`;
    const items = await transaction.supplierItem.count({ where: { materialId: where.id } });
    if (items > 0)
      throw new RequestProblem('still-in-use', {
        detail: `${items} articles of suppliers are linked to this material: unlink them first.`,
      });
    const { count } = await transaction.material.deleteMany({ where });
    await requireUpdated(count, 'material', () => exists(transaction, where.id));
  });
}

async function exists(database: Prisma.TransactionClient, id: string): Promise<boolean> {
  return (await database.material.count({ where: { id } })) > 0;
}
