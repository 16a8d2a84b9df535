import { type Bill, type DrawnBill, FINISHED_FACES, GRAINS } from '@scantling/costing';
import { z } from 'zod';
import { nonNegativeDecimalText, positiveDecimalText, shareText } from '../decimal-text.ts';
import { orFormula } from './formula.ts';

/** The maker's own id of a row: short, without spaces, since a list of parts is separated by them. */
export const rowId = z
  .string()
  .regex(/^\S{1,40}$/, { error: 'is no id: 1 to 40 characters without spaces' })
  .meta({ examples: ['leg', 'A3'] });
const rowName = z.string().trim().min(1).max(120);
/** The code of a record: material, labour grade, tool. */
export const recordCode = z
  .string()
  .trim()
  .min(1)
  .max(60)
  .meta({ examples: ['ASH-5'] });
const millimetres = orFormula(positiveDecimalText);
const hours = orFormula(nonNegativeDecimalText);
const count = orFormula(z.number().int().min(1).max(10_000));

const partSchema = z.strictObject({
  id: rowId,
  name: rowName,
  assembly: rowId.exactOptional(),
  quantity: count,
  material: recordCode,
  length: millimetres,
  width: millimetres,
  thickness: millimetres,
  grain: z.enum(GRAINS),
  lengthAllowance: orFormula(nonNegativeDecimalText).exactOptional(),
  widthAllowance: orFormula(nonNegativeDecimalText).exactOptional(),
  staves: orFormula(z.number().int().min(1).max(100)).exactOptional(),
  isResawn: z.boolean().exactOptional(),
  edgeBand: z
    .strictObject({
      material: recordCode,
      thickness: millimetres,
      longEdges: z.union([z.literal(0), z.literal(1), z.literal(2)]),
      endEdges: z.union([z.literal(0), z.literal(1), z.literal(2)]),
    })
    .exactOptional(),
  veneer: z
    .strictObject({
      material: recordCode,
      thickness: millimetres,
      faces: z.union([z.literal(1), z.literal(2)]),
    })
    .exactOptional(),
  facesFinished: z.enum(FINISHED_FACES),
  spares: orFormula(z.number().int().min(0).max(1000)).exactOptional(),
  rejectShare: shareText.exactOptional(),
});

/**
 * A bill of materials, lengths in millimetres and times in hours as decimal text; any of its sizes and quantities
 * may be a formula over the design's parameters.
 */
export const billSchema: z.ZodType<DrawnBill, DrawnBill> = z
  .strictObject({
    assemblies: z.array(z.strictObject({ id: rowId, name: rowName, quantity: count })).max(200),
    parts: z.array(partSchema).max(2000),
    components: z
      .array(
        z.strictObject({
          id: rowId,
          name: rowName,
          assembly: rowId.exactOptional(),
          quantity: orFormula(positiveDecimalText),
          material: recordCode,
        }),
      )
      .max(1000),
    finishes: z
      .array(
        z.strictObject({
          id: rowId,
          name: rowName,
          material: recordCode,
          coats: orFormula(z.number().int().min(1).max(50)),
          transferEfficiency: shareText.refine((text) => Number(text) > 0, { error: 'cannot be 0' }),
          dryFilmUm: orFormula(positiveDecimalText).exactOptional(),
          batchRest: orFormula(nonNegativeDecimalText).exactOptional(),
          parts: z.array(rowId).max(2000),
        }),
      )
      .max(100),
    consumables: z
      .array(
        z.strictObject({
          id: rowId,
          name: rowName,
          material: recordCode,
          quantity: orFormula(positiveDecimalText),
          per: z.enum(['piece', 'batch']),
        }),
      )
      .max(500),
    operations: z
      .array(
        z.strictObject({
          id: rowId,
          name: rowName,
          assembly: rowId.exactOptional(),
          setupHours: hours,
          runHours: hours,
          runHoursLow: hours.exactOptional(),
          runHoursHigh: hours.exactOptional(),
          elapsedHours: hours,
          grade: recordCode,
          machine: recordCode.exactOptional(),
          machineShare: nonNegativeDecimalText.exactOptional(),
          learningRate: shareText
            .refine((text) => Number(text) > 0, { error: 'cannot be 0' })
            .exactOptional(),
        }),
      )
      .max(1000),
  })
  .meta({ id: 'BillOfMaterials' });

export const exampleBill = {
  assemblies: [],
  parts: [
    {
      id: 'seat',
      name: 'Seat',
      quantity: 1,
      material: 'ASH-5',
      length: '1200',
      width: '320',
      thickness: '26',
      grain: 'length',
      staves: 3,
      facesFinished: 'all',
    },
  ],
  components: [{ id: 'glides', name: 'Felt glides', quantity: '4', material: 'GLIDE-20' }],
  finishes: [
    { id: 'oil', name: 'Hard oil', material: 'OIL-HARD', coats: 2, transferEfficiency: '1', parts: [] },
  ],
  consumables: [],
  operations: [
    {
      id: 'glue-up',
      name: 'Glue up the seat',
      setupHours: '0.25',
      runHours: '0.75',
      elapsedHours: '3',
      grade: 'owner',
    },
  ],
} as const satisfies Bill;
