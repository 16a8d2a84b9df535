import {
  COSTING_BASES,
  type CostSheet,
  isFormula,
  NOTICE_KINDS,
  NOTICE_WEIGHTS,
  PARAMETER_KINDS,
} from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { calendarDate } from '../record.ts';
import { columnSchema, toColumn } from './worked-cost-column.ts';

const noticeSchema = z.strictObject({
  kind: z.enum(NOTICE_KINDS),
  weight: z.enum(NOTICE_WEIGHTS),
  /** What it is about: a material's code, a supplier's, a pool's name. */
  about: z.string(),
  message: z.string(),
  mend: z.string(),
  /** The record to open, as the sources of figures name it. */
  record: z.string(),
  /** Numbers of pieces it holds for. */
  quantities: z.array(z.number().int()),
});

/** A parameter of the design with the value this sheet is worked out for. */
const workedParameterSchema = z.strictObject({
  id: z.string(),
  label: z.string(),
  kind: z.enum(PARAMETER_KINDS),
  /** null for a material. */
  value: figureId.nullable(),
  /** Code of the material chosen; null for numbers. */
  material: z.string().nullable(),
  /** The value it was drawn with: millimetres, a number, a code; null where it is worked out from others. */
  drawn: z.string().nullable(),
});

/** A worked-out cost sheet: everything that is a number is the id of a figure in `figures`. */
export const workedCostSheetSchema = z
  .strictObject({
    currency: currencySchema,
    onDate: calendarDate,
    basis: z.enum(COSTING_BASES),
    columns: z.array(columnSchema),
    parameters: z.array(workedParameterSchema),
    parts: z.array(
      z.strictObject({
        id: z.string(),
        name: z.string(),
        stock: z.string(),
        roughLength: figureId,
        roughWidth: figureId,
        roughFace: figureId,
      }),
    ),
    weight: z.strictObject({ mass: figureId, partsWithoutDensity: z.array(z.string()) }),
    notices: z.array(noticeSchema),
    /** False where a material has no price, so that cost and price are too low. */
    isComplete: z.boolean(),
    figures: figureTableSchema,
  })
  .meta({ id: 'WorkedCostSheet' });
export type WorkedCostSheet = z.output<typeof workedCostSheetSchema>;

/** The answer for a sheet; the web's live preview makes it from the same function. */
export function toWorkedCostSheet(sheet: CostSheet, options: { withDerivations: boolean }): WorkedCostSheet {
  const table = new FigureTableBuilder(options);
  const columns = sheet.columns.map((column) => toColumn(column, table));
  const parts = sheet.parts.map((need) => ({
    id: need.part.id,
    name: need.part.name,
    stock: need.stock.code,
    roughLength: table.add(`part/${need.part.id}/rough-length`, need.roughLength),
    roughWidth: table.add(`part/${need.part.id}/rough-width`, need.roughWidth),
    roughFace: table.add(`part/${need.part.id}/rough-face`, need.roughFace),
  }));
  const parameters = sheet.parameters.map(
    ({ parameter: { id, label, kind, value: drawn }, value, figure }) => ({
      id,
      label,
      kind,
      value: figure === null ? null : table.add(`parameter/${id}`, figure),
      material: figure === null ? value : null,
      drawn: isFormula(drawn) ? null : drawn,
    }),
  );
  const weight = {
    mass: table.add('weight', sheet.weight.mass),
    partsWithoutDensity: [...sheet.weight.partsWithoutDensity],
  };
  const { currency, onDate, basis } = sheet.input;
  return {
    currency,
    onDate,
    basis,
    columns,
    parameters,
    parts,
    weight,
    notices: sheet.notices.map((notice) => ({ ...notice, quantities: [...notice.quantities] })),
    isComplete: sheet.isComplete,
    figures: table.table(),
  };
}
