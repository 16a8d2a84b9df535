import { z } from 'zod';
import { usedPictureSchema } from '../pictures/picture.ts';
import { givenName, moment, recordId } from '../record.ts';
import { billSchema, exampleBill, recordCode } from './bill.ts';
import { overallSizeText } from './overall-size.ts';
import { exampleParameters, exampleVariants, parametersSchema, variantsSchema } from './parameters.ts';

export const unitSystemSchema = z.enum(['metric', 'imperial']);

export const designFields = {
  code: recordCode,
  name: givenName,
  description: z.string().max(4000),
  /** How its lengths are shown, and what a bare number means in its files. */
  unitSystem: unitSystemSchema,
  /** Length, width and height over all; null where it is not known, left out where it stays as it is. */
  overallSize: overallSizeText.nullable().exactOptional(),
};

/** What a revision keeps. */
export const drawingFields = {
  bill: billSchema,
  /** What may be chosen: overall sizes, numbers, materials. */
  parameters: parametersSchema,
  /** Named sets of values of the parameters. */
  variants: variantsSchema,
};

export const designSummarySchema = z.strictObject({
  id: recordId,
  ...designFields,
  overallSize: overallSizeText.nullable(),
  isDemo: z.boolean(),
  updatedAt: moment,
  parts: z.number().int(),
  operations: z.number().int(),
  /** The picture it is known by. */
  cover: usedPictureSchema.nullable(),
});

export const designSchema = z.strictObject({
  id: recordId,
  ...designFields,
  overallSize: overallSizeText.nullable(),
  isDemo: z.boolean(),
  updatedAt: moment,
  ...drawingFields,
  /** Number of the newest revision. */
  version: z.number().int(),
});

export const exampleDesign: z.input<typeof designSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000010',
  code: 'BENCH',
  name: 'Hall bench',
  description: 'Turned legs, a seat of three staves.',
  unitSystem: 'metric',
  overallSize: { length: '1200', width: '350', height: '460' },
  isDemo: false,
  updatedAt: '2026-03-01T09:30:00.000Z',
  bill: {
    ...exampleBill,
    parts: exampleBill.parts.map((part) => ({ ...part, length: { formula: 'length' } })),
  },
  parameters: exampleParameters,
  variants: exampleVariants,
  version: 1,
};
