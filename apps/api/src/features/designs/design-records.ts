import { type designSchema, drawingFields, type OverallSizeText } from '@scantling/contracts';
import { type DrawnDesign, EMPTY_BILL, plainDesign } from '@scantling/costing';
import { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { Design, DesignRevision, Prisma } from '../../generated/prisma/client.ts';
import { COVER } from '../../pictures/shown-pictures.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

type Access = Database | Prisma.TransactionClient;
type DesignAnswer = z.output<typeof designSchema>;

const NEWEST = { revisions: { orderBy: { number: 'desc' }, take: 1 } } as const;

const drawingSchema = z.object(drawingFields);

/** What a stored revision draws. @throws ZodError where it is no drawing, which no code of ours writes */
export function drawingOf(
  revision: Pick<DesignRevision, 'bill' | 'parameters' | 'variants'> | undefined,
): DrawnDesign {
  return revision === undefined ? plainDesign(EMPTY_BILL) : drawingSchema.parse(revision);
}

export function unitSystemOf(row: { readonly unitSystem: string }): 'metric' | 'imperial' {
  return row.unitSystem === 'imperial' ? 'imperial' : 'metric';
}

type Sizes = Pick<Design, 'overallLengthMm' | 'overallWidthMm' | 'overallHeightMm'>;

/** All three sizes in mm, or null. */
export function overallSizeOf({ overallLengthMm, overallWidthMm, overallHeightMm }: Sizes) {
  if (overallLengthMm === null || overallWidthMm === null || overallHeightMm === null) return null;
  return {
    length: overallLengthMm.toFixed(),
    width: overallWidthMm.toFixed(),
    height: overallHeightMm.toFixed(),
  };
}

/** The columns of an overall size; none where it is to stay as it is. */
export function sizeColumns(size: OverallSizeText | null | undefined) {
  if (size === undefined) return {};
  return {
    overallLengthMm: size?.length ?? null,
    overallWidthMm: size?.width ?? null,
    overallHeightMm: size?.height ?? null,
  };
}

function toDesign(row: Design & { revisions: DesignRevision[] }): DesignAnswer {
  const { id, code, name, description, isDemo, version } = row;
  return {
    id,
    code,
    name,
    description,
    unitSystem: unitSystemOf(row),
    overallSize: overallSizeOf(row),
    isDemo,
    version,
    updatedAt: row.updatedAt.toISOString(),
    ...drawingOf(row.revisions[0]),
  };
}

/** A design with its newest bill, or null. */
export async function findDesign(database: Access, id: string): Promise<DesignAnswer | null> {
  const row = await database.design.findUnique({ where: { id }, include: NEWEST });
  return row === null ? null : toDesign(row);
}

/** A revision of a design, the newest where none is named; null where there is none. */
export async function findRevision(database: Access, designId: string, number: number | null) {
  const revision = await database.designRevision.findFirst({
    where: { designId, ...(number === null ? {} : { number }) },
    orderBy: { number: 'desc' },
  });
  return revision === null
    ? null
    : { ...revision, unitSystem: unitSystemOf(revision), drawing: drawingOf(revision) };
}

/** Designs by code, after the one named, each with its cover. */
export async function pageOfDesigns(database: Access, after: string | undefined, take: number) {
  return database.design.findMany({
    ...(after === undefined ? {} : { where: { code: { gt: after } } }),
    orderBy: { code: 'asc' },
    take,
    include: { ...NEWEST, pictures: COVER },
  });
}

/** @throws RequestProblem already-exists where another design has the code */
export async function requireFreeCode(database: Access, code: string, exceptId?: string): Promise<void> {
  const other = await database.design.findUnique({ where: { code }, select: { id: true } });
  if (other === null || other.id === exceptId) return;
  throw new RequestProblem('already-exists', {
    errors: [{ field: 'code', message: `belongs to another design already`, mend: 'Use another code.' }],
  });
}

interface Revision {
  readonly number: number;
  readonly drawing: DrawnDesign;
  readonly unitSystem: string;
  readonly note: string;
  readonly createdBy: string;
}

/** Keeps a revision for good. */
export async function addRevision(database: Access, designId: string, revision: Revision): Promise<void> {
  const { drawing, ...rest } = revision;
  const { bill, parameters, variants } = JSON.parse(JSON.stringify(drawing));
  await database.designRevision.create({ data: { designId, ...rest, bill, parameters, variants } });
}
