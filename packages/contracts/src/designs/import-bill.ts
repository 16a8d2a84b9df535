import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { billSchema, exampleBill } from './bill.ts';
import { exampleDesign } from './design.ts';

/** One thing in a bill file that cannot be read. */
export const billRowProblemSchema = z.strictObject({
  /** Line of the file, headers being line 1; 0 for the file as a whole. */
  line: z.number().int(),
  column: z.string(),
  message: z.string(),
  mend: z.string(),
});

export const importBill = defineContract({
  name: 'import-bill',
  method: 'POST',
  path: '/api/designs/:id/bill-file',
  summary: 'Read a bill of materials from a file',
  description:
    'CSV or XLSX in the columns the README describes. With `preview=true` nothing is changed. A file with any unreadable cell or unknown code is refused whole, with every problem named by line and column.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  query: z.strictObject({ preview: z.enum(['true', 'false']).default('false') }),
  answer: z.strictObject({
    /** null while there are problems. */
    bill: billSchema.nullable(),
    problems: z.array(billRowProblemSchema),
    /** Headers of the file that are none of ours; their cells are not read. */
    ignoredHeaders: z.array(z.string()),
    isApplied: z.boolean(),
    version: z.number().int(),
  }),
  needsIfMatch: true,
  givesEtag: true,
  takesFile: true,
  example: {
    params: { id: exampleDesign.id },
    query: { preview: 'false' },
    answer: { bill: exampleBill, problems: [], ignoredHeaders: [], isApplied: true, version: 2 },
  },
});
