import { z } from 'zod';
import { recordId } from '../record.ts';

/** What a supplier calls a thing, and which material it is here. */
export const supplierItemSchema = z
  .strictObject({
    id: recordId,
    supplierId: recordId,
    code: z.string(),
    description: z.string(),
    material: z.strictObject({ id: recordId, code: z.string(), name: z.string() }).nullable(),
  })
  .meta({ id: 'SupplierItem' });

export const exampleSupplierItem = {
  id: '0193f6a0-7c11-7000-8000-000000000042',
  supplierId: '0193f6a0-7c11-7000-8000-000000000010',
  code: 'A-44-FAS',
  description: 'Ash 4/4 FAS rough',
  material: { id: '0193f6a0-7c11-7000-8000-000000000020', code: 'ASH-4/4', name: 'Ash 4/4, rough' },
} as const;
