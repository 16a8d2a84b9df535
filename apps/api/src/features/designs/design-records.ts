import { billSchema, type designSchema, type OverallSizeText } from '@scantling/contracts';
import { type Bill, EMPTY_BILL } from '@scantling/costing';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { Design, DesignRevision, Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

type Access = Database | Prisma.TransactionClient;
type DesignAnswer = z.output<typeof designSchema>;

const NEWEST = { revisions: { orderBy: { number: 'desc' }, take: 1 } } as const;

/** The bill in a stored revision. @throws ZodError where it is not one, which no code of ours writes */
export function billOf(revision: Pick<DesignRevision, 'bill'> | undefined): Bill {
  return revision === undefined ? EMPTY_BILL : billSchema.parse(revision.bill);
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
  const unitSystem = row.unitSystem === 'imperial' ? 'imperial' : 'metric';
  return {
    id,
    code,
    name,
    description,
    unitSystem,
    overallSize: overallSizeOf(row),
    isDemo,
    version,
    updatedAt: row.updatedAt.toISOString(),
    bill: billOf(row.revisions[0]),
  };
}

/** A design with its newest bill, or null. */
export async function findDesign(database: Access, id: string): Promise<DesignAnswer | null> {
  const row = await database.design.findUnique({ where: { id }, include: NEWEST });
  return row === null ? null : toDesign(row);
}

/** Designs by code, after the one named. */
export async function pageOfDesigns(database: Access, after: string | undefined, take: number) {
  return database.design.findMany({
    ...(after === undefined ? {} : { where: { code: { gt: after } } }),
    orderBy: { code: 'asc' },
    take,
    include: NEWEST,
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
  readonly bill: Bill;
  readonly note: string;
  readonly createdBy: string;
}

/** Keeps a revision for good. */
export async function addRevision(database: Access, designId: string, revision: Revision): Promise<void> {
  await database.designRevision.create({
    data: { designId, ...revision, bill: JSON.parse(JSON.stringify(revision.bill)) },
  });
}
