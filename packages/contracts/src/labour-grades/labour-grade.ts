import { z } from 'zod';
import { ratioText } from '../bounded-decimal.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { recordCode } from '../designs/bill.ts';
import { givenName, recordId } from '../record.ts';

export const labourGradeInputSchema = z.strictObject({
  /** Operations name the grade by it. */
  code: recordCode,
  name: givenName,
  /** Gross pay of a paid hour; for the owner, what an hour of theirs is held to be worth. */
  payPerHour: moneyText,
  /** What comes on top of pay (social contributions, paid leave, insurance), as a share of it. */
  burden: ratioText,
  /** Hours spent on jobs over hours paid, above 0. */
  productiveShare: shareText.refine((text) => /[1-9]/.test(text), {
    error: 'leaves no productive hour',
    params: { mend: 'Give a share above 0, such as "0.75".' },
  }),
  isOwner: z.boolean(),
});

export const labourGradeSchema = labourGradeInputSchema
  .extend({ id: recordId, isDemo: z.boolean(), version: z.number().int() })
  .meta({ id: 'LabourGrade' });
export type LabourGradeRecord = z.output<typeof labourGradeSchema>;

export const exampleLabourGradeInput = {
  code: 'OWNER',
  name: 'Owner at the bench',
  payPerHour: '28',
  burden: '0.22',
  productiveShare: '0.7',
  isOwner: true,
} as const;
export const exampleLabourGrade = {
  ...exampleLabourGradeInput,
  id: '0193f6a0-7c11-7000-8000-000000000002',
  isDemo: false,
  version: 1,
} as const;
