import { MATERIAL_FORMS } from '@scantling/costing';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { shareText } from '../decimal-text.ts';
import { givenName, recordId } from '../record.ts';
import { givenCode, notesText } from '../suppliers/supplier.ts';

const shortText = z.string().trim().min(1).max(100).nullable().default(null);
const measure = boundedDecimal({ digits: 6, places: 6, isPositive: true, example: '25.4' });
const millimetres = measure.nullable().default(null).meta({ description: 'Millimetres' });
const quantity = measure.nullable().default(null);
const share = shareText.nullable().default(null);

export const finishFields = z.strictObject({
  volumeSolids: shareText.nullable().default(null).meta({ description: 'As applied, after thinning' }),
  coverageM2PerL: measure.nullable().default(null),
  coverageIsTheoretical: z.boolean().default(false),
  goesOnByWiping: z.boolean().default(false),
  selfHeatingRags: z.boolean().default(false),
});

/** What a material is entered with; what does not concern its form stays null. */
export const materialFields = z.strictObject({
  code: givenCode,
  name: givenName,
  form: z.enum(MATERIAL_FORMS),
  family: shortText.meta({ description: 'Shared by materials that differ only in thickness' }),
  species: shortText,
  grade: shortText,
  quarter: z
    .string()
    .regex(/^\d{1,2}\/4$/)
    .nullable()
    .default(null)
    .meta({ examples: ['4/4'] }),
  nominalThicknessMm: millimetres,
  surfacedThicknessMm: millimetres,
  thicknessMm: millimetres,
  widthMm: millimetres,
  lengthMm: millimetres,
  densityKgM3: quantity,
  yieldFactor: share,
  offcutValueShare: share,
  packContent: quantity.meta({ description: 'Content of one pack, in the unit it is used in' }),
  boardContent: quantity.meta({ description: 'Board feet in one board as the yard sells it' }),
  finish: finishFields.nullable().default(null),
  preferredSupplierId: recordId.nullable().default(null),
  notes: notesText.default(''),
});

export const materialSchema = z
  .strictObject({ id: recordId, ...materialFields.shape, isDemo: z.boolean(), version: z.number().int() })
  .meta({ id: 'Material' });
export type Material = z.output<typeof materialSchema>;

export const exampleMaterialFields = {
  code: 'ASH-4/4',
  name: 'Ash 4/4, rough',
  form: 'rough-lumber',
  family: 'ASH',
  species: 'ash, white',
  grade: 'FAS',
  quarter: '4/4',
  nominalThicknessMm: '25.4',
  surfacedThicknessMm: '20.6375',
  thicknessMm: null,
  widthMm: null,
  lengthMm: null,
  densityKgM3: '680',
  yieldFactor: '0.65',
  offcutValueShare: '0.5',
  packContent: null,
  boardContent: null,
  finish: null,
  preferredSupplierId: null,
  notes: '',
} as const;
export const exampleMaterial = {
  id: '0193f6a0-7c11-7000-8000-000000000020',
  ...exampleMaterialFields,
  isDemo: false,
  version: 1,
} as const;
