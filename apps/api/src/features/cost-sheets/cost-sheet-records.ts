import {
  type costSheetSchema,
  costTermsSchema,
  type FieldProblem,
  ownValuesSchema,
  parameterValuesSchema,
  quantitiesSchema,
} from '@scantling/contracts';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { Client, CostSheet, Design, Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { choiceProblems } from './design-choice.ts';

type Access = Database | Prisma.TransactionClient;
export type CostSheetAnswer = z.output<typeof costSheetSchema>;
type Row = CostSheet & {
  design: Pick<Design, 'code' | 'name' | 'unitSystem' | 'version'>;
  client: Pick<Client, 'name'> | null;
};

export const WITH_NAMES = {
  design: { select: { code: true, name: true, unitSystem: true, version: true } },
  client: { select: { name: true } },
} as const;

export function toCostSheet(row: Row): CostSheetAnswer {
  return {
    id: row.id,
    title: row.title,
    designId: row.designId,
    clientId: row.clientId,
    revision: row.revision,
    variant: row.variant,
    parameterValues: parameterValuesSchema.parse(row.parameterValues),
    basis: row.basis === 'commission' ? 'commission' : 'shop',
    onDate: row.onDate === null ? null : row.onDate.toISOString().slice(0, 10),
    quantities: quantitiesSchema.parse(row.quantities),
    terms: costTermsSchema.parse(row.terms),
    ownValues: ownValuesSchema.parse(row.ownValues),
    designCode: row.design.code,
    designName: row.design.name,
    newestRevision: row.design.version,
    unitSystem: row.design.unitSystem === 'imperial' ? 'imperial' : 'metric',
    clientName: row.client?.name ?? null,
    isDemo: row.isDemo,
    updatedAt: row.updatedAt.toISOString(),
    version: row.version,
  };
}

export async function findCostSheet(database: Access, id: string): Promise<CostSheetAnswer | null> {
  const row = await database.costSheet.findUnique({ where: { id }, include: WITH_NAMES });
  return row === null ? null : toCostSheet(row);
}

type Fields = Pick<
  CostSheetAnswer,
  | 'title'
  | 'designId'
  | 'revision'
  | 'variant'
  | 'parameterValues'
  | 'clientId'
  | 'basis'
  | 'onDate'
  | 'quantities'
  | 'terms'
>;

/**
 * @throws RequestProblem input-invalid where design, revision or client are not there, the design takes no such choice,
 * or a number of pieces stands twice
 */
export async function toData(database: Access, body: Fields) {
  const errors: FieldProblem[] = [];
  if ((await database.design.count({ where: { id: body.designId } })) === 0) {
    errors.push({ field: 'designId', message: 'names no design', mend: 'Choose one of the designs.' });
  } else errors.push(...(await choiceProblems(database, body)));
  if (body.clientId !== null && (await database.client.count({ where: { id: body.clientId } })) === 0) {
    errors.push({
      field: 'clientId',
      message: 'names no client',
      mend: 'Choose one of the clients, or none.',
    });
  }
  if (new Set(body.quantities).size < body.quantities.length) {
    errors.push({
      field: 'quantities',
      message: 'has a number twice',
      mend: 'Give each number of pieces once.',
    });
  }
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  return {
    ...body,
    onDate: body.onDate === null ? null : new Date(`${body.onDate}T00:00:00Z`),
    terms: JSON.parse(JSON.stringify(body.terms)),
  };
}
