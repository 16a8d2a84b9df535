import { drawingFields, type LeafHome } from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import type { CostSheetAnswer } from '../cost-sheets/cost-sheet-records.ts';
import { findDesign } from '../designs/design-records.ts';
import { saveRevision } from '../designs/save-revision.ts';
import { requireSoundDrawing } from '../designs/sound-drawing.ts';
import { type FieldValue, setInRecord } from './set-in-record.ts';
import type { WrittenPlace } from './write-records.ts';

type DesignHome = Extract<LeafHome, { readonly kind: 'design' | 'design-parameter' }>;

export interface DesignValue {
  readonly home: DesignHome;
  readonly value: string;
  readonly field: string;
}

type Drawing = z.output<typeof drawingSchema>;
const drawingSchema = z.strictObject(drawingFields);

/** Where a value stands in the drawing. @throws RequestProblem input-invalid where the newest revision has it no more */
function placeOf(drawing: Drawing, { home, value, field }: DesignValue, sheet: CostSheetAnswer): FieldValue {
  const rows = home.kind === 'design' ? drawing.bill[home.list] : drawing.parameters;
  const id = home.kind === 'design' ? home.row : home.id;
  const at = rows.findIndex((row) => row.id === id);
  if (at < 0)
    throw fieldProblem(
      field,
      `stands in a row "${id}" that the newest revision of the design does not have`,
      'Follow the newest revision first, or enter it for this sheet only.',
    );
  if (home.kind === 'design') return { path: ['bill', home.list, String(at), ...home.path], value, field };
  const variant = drawing.variants.find((one) => one.id === sheet.variant);
  if (sheet.parameterValues[id] !== undefined || variant?.values[id] !== undefined)
    throw fieldProblem(
      field,
      'is chosen on this sheet or by its variant, not as drawn',
      'Enter it for this sheet only, or change the variant in the design.',
    );
  return { path: ['parameters', String(at), 'value'], value, field };
}

/**
 * The next revision of the sheet's design, with the values in it.
 * @throws RequestProblem input-invalid where a formula stands there, or the sheet is pinned to another revision
 */
export async function writeDesign(
  transaction: Prisma.TransactionClient,
  sheet: CostSheetAnswer,
  values: readonly DesignValue[],
  createdBy: string,
): Promise<WrittenPlace> {
  const field = values[0]?.field ?? 'changes';
  const design = await findDesign(transaction, sheet.designId);
  if (design === null) throw fieldProblem(field, 'is of a design that is gone', 'Choose another design.');
  if (sheet.revision !== null && sheet.revision !== design.version)
    throw fieldProblem(
      field,
      `would make a new revision, and this sheet is pinned to revision ${sheet.revision}`,
      'Let the sheet follow the newest revision, or enter it for this sheet only.',
    );
  const { bill, parameters, variants, unitSystem, version, id } = design;
  const before = { bill, parameters, variants };
  const places = values.map((value) => placeOf(before, value, sheet));
  const drawing = setInRecord(drawingSchema, before, places);
  await requireSoundDrawing(transaction, drawing, unitSystem);
  await saveRevision(transaction, {
    id,
    version,
    fields: {},
    drawing,
    unitSystem,
    note: `Taken over from the cost sheet "${sheet.title}"`,
    createdBy,
  });
  return { place: `the design "${design.name}", as revision ${version + 1}`, record: `design:${id}` };
}
