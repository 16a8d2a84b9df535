import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { givenName, recordId } from '../record.ts';

export const personInputSchema = z.strictObject({
  name: givenName,
  gradeId: recordId,
  paidHoursPerYear: boundedDecimal({ digits: 4, places: 2, example: '1720' }),
});

export const personSchema = personInputSchema
  .extend({
    id: recordId,
    gradeCode: z.string(),
    gradeName: z.string(),
    isDemo: z.boolean(),
    version: z.number().int(),
  })
  .meta({ id: 'Person' });
export type PersonRecord = z.output<typeof personSchema>;

export const examplePersonInput = {
  name: 'Noor Ashdown',
  gradeId: '0193f6a0-7c11-7000-8000-000000000001',
  paidHoursPerYear: '1720',
} as const;
export const examplePerson = {
  ...examplePersonInput,
  id: '0193f6a0-7c11-7000-8000-000000000002',
  gradeCode: 'OWNER',
  gradeName: 'Owner at the bench',
  isDemo: false,
  version: 1,
} as const;
