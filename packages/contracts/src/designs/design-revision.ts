import { z } from 'zod';
import { moment } from '../record.ts';
import { drawingFields, exampleDesign, unitSystemSchema } from './design.ts';

const revisionFields = {
  number: z.number().int().min(1),
  note: z.string(),
  /** The person or API token; null where it is gone. */
  madeBy: z.string().nullable(),
  createdAt: moment,
  /** What bare numbers of its formulas are in. */
  unitSystem: unitSystemSchema,
};

export const designRevisionSummarySchema = z.strictObject({
  ...revisionFields,
  parts: z.number().int(),
  operations: z.number().int(),
  parameters: z.number().int(),
  variants: z.number().int(),
});

export const designRevisionSchema = z.strictObject({ ...revisionFields, ...drawingFields });

export const designRevisionParams = z.strictObject({
  id: z.string().min(1).max(64),
  number: z.coerce.number().int().min(1).max(1_000_000),
});

export const exampleDesignRevisionSummary: z.input<typeof designRevisionSummarySchema> = {
  number: 2,
  note: 'Seat 20 mm wider',
  madeBy: 'Imogen Tarrasque',
  createdAt: '2026-03-02T10:00:00.000Z',
  unitSystem: 'metric',
  parts: 1,
  operations: 1,
  parameters: 1,
  variants: 1,
};

const { number, note, madeBy, createdAt, unitSystem } = exampleDesignRevisionSummary;
const { bill, parameters, variants } = exampleDesign;
export const exampleDesignRevision: z.input<typeof designRevisionSchema> = {
  number,
  note,
  madeBy,
  createdAt,
  unitSystem,
  bill,
  parameters,
  variants,
};
