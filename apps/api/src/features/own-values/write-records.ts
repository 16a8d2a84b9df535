import {
  type LeafHome,
  labourGradeInputSchema,
  materialFields,
  overheadAmountInputSchema,
  supplierFields,
  toolInputSchema,
  workshopSettingsSchema,
} from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { changeLabourGradeIn, toLabourGrade } from '../labour-grades/labour-grade-records.ts';
import { changeMaterialIn, toMaterial } from '../materials/material-records.ts';
import { changeOverheadAmountIn, toOverheadAmount } from '../overhead/overhead-amount-records.ts';
import { changeSupplierIn, toSupplier } from '../suppliers/supplier-records.ts';
import { changeToolIn, toTool } from '../tools/tool-records.ts';
import { changeWorkshop } from '../workshop/change-workshop.ts';
import { type FieldValue, setInRecord } from './set-in-record.ts';

type Access = Prisma.TransactionClient;
type RecordHome = Extract<LeafHome, { readonly code: string; readonly path: readonly string[] }>;

/** Where values went, in words, and the record as sources name it. */
export interface WrittenPlace {
  readonly place: string;
  readonly record: string | null;
}

interface Kept {
  readonly id: string;
  readonly isDemo: boolean;
  readonly version: number;
}

function split<Row extends Kept>({ id, version, isDemo: _isDemo, ...given }: Row) {
  return { where: { id, version }, given };
}

function gone(values: readonly FieldValue[]): Error {
  return fieldProblem(
    values[0]?.field ?? 'changes',
    'comes from a record that is not there any more',
    'Read the sheet again, or enter it for this sheet only.',
  );
}

/** What a supplier asks is entered with its currency's own form; the rest as each record's form has it. */
const WRITERS: {
  readonly [Kind in RecordHome['kind']]: (
    transaction: Access,
    code: string,
    values: readonly FieldValue[],
  ) => Promise<WrittenPlace>;
} = {
  'labour-grade': async (transaction, code, values) => {
    const row = await transaction.labourGrade.findUnique({ where: { code } });
    if (row === null) throw gone(values);
    const { where, given } = split(toLabourGrade(row));
    await changeLabourGradeIn(transaction, where, setInRecord(labourGradeInputSchema, given, values));
    return { place: `labour grade "${row.name}"`, record: `labour-grade:${code}` };
  },
  tool: async (transaction, code, values) => {
    const row = await transaction.tool.findUnique({ where: { code } });
    if (row === null) throw gone(values);
    const { where, given } = split(toTool(row));
    await changeToolIn(transaction, where, setInRecord(toolInputSchema, given, values));
    return { place: `tool record "${row.name}"`, record: `tool:${code}` };
  },
  material: async (transaction, code, values) => {
    const row = await transaction.material.findUnique({ where: { code } });
    if (row === null) throw gone(values);
    const { where, given } = split(toMaterial(row));
    await changeMaterialIn(transaction, where, setInRecord(materialFields, given, values));
    return { place: `material "${row.name}"`, record: `material:${code}` };
  },
  supplier: async (transaction, code, values) => {
    const row = await transaction.supplier.findUnique({ where: { code } });
    if (row === null) throw gone(values);
    const { where, given } = split(toSupplier(row));
    await changeSupplierIn(transaction, where, setInRecord(supplierFields, given, values));
    return { place: `terms of supplier "${row.name}"`, record: `supplier:${code}` };
  },
};

/** Changes one record by its own rules. @throws RequestProblem input-invalid naming the value */
export function writeRecord(
  transaction: Access,
  { kind, code }: RecordHome,
  values: readonly FieldValue[],
): Promise<WrittenPlace> {
  return WRITERS[kind](transaction, code, values);
}

/** Rates and allowances of the workshop. @throws RequestProblem input-invalid naming the value */
export async function writeWorkshop(
  transaction: Access,
  values: readonly FieldValue[],
): Promise<WrittenPlace> {
  const { version, settings, ...rest } = await readWorkshop(transaction);
  const next = setInRecord(workshopSettingsSchema, settings, values);
  await changeWorkshop(transaction, version, { ...rest, settings: next });
  return { place: 'the settings of the workshop', record: 'workshop:settings' };
}

/** One yearly amount. @throws RequestProblem input-invalid naming the value */
export async function writeOverheadAmount(
  transaction: Access,
  id: string,
  value: FieldValue,
): Promise<WrittenPlace> {
  const row = await transaction.overheadAmount.findUnique({ where: { id } });
  if (row === null) throw gone([value]);
  const { where, given } = split(toOverheadAmount(row));
  await changeOverheadAmountIn(transaction, where, setInRecord(overheadAmountInputSchema, given, [value]));
  return { place: `yearly amount "${row.name}"`, record: `overhead:${id}` };
}
