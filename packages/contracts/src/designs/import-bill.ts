import { BILL_COLUMNS, ROW_KINDS } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { billSchema, exampleBill } from './bill.ts';
import { exampleDesign } from './design.ts';
import { parametersSchema, variantsSchema } from './parameters.ts';

/** One thing in a bill file that cannot be read. */
export const billRowProblemSchema = z.strictObject({
  /** Line of the file, headers being line 1; 0 for the file as a whole. */
  line: z.number().int(),
  column: z.string(),
  message: z.string(),
  mend: z.string(),
});

export const billMappingSchema = z
  .strictObject({
    columns: z
      .partialRecord(z.enum(BILL_COLUMNS), z.string().max(500))
      .meta({ description: "Our column: the file's header" }),
    rowKind: z
      .enum(ROW_KINDS)
      .exactOptional()
      .meta({ description: 'What every row is, for a file without a column that says it' }),
  })
  .meta({ id: 'BillMapping' });

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** A mapping as the query of an upload carries it: JSON. */
const mappingText = z
  .string()
  .max(20_000)
  .transform(parsed)
  .pipe(billMappingSchema)
  .optional()
  .meta({ description: 'Which column is which, as JSON of a BillMapping; it is remembered for later files' });

export const importBill = defineContract({
  name: 'import-bill',
  method: 'POST',
  path: '/api/designs/:id/bill-file',
  summary: 'Read a bill of materials from a file',
  description:
    'CSV or XLSX with the columns the README describes; other headers are guessed, matched by `mapping`, and remembered. With `preview=true` the bill is not changed. A file with any unreadable cell or unknown code is refused whole, with every problem named by line and column.',
  tag: 'designs',
  roles: MAKERS,
  params: recordParams,
  query: z.strictObject({ preview: z.enum(['true', 'false']).default('false'), mapping: mappingText }),
  answer: z.strictObject({
    /** null while there are problems. */
    bill: billSchema.nullable(),
    /** Of the file; those of the design where the file names none. */
    parameters: parametersSchema,
    variants: variantsSchema,
    problems: z.array(billRowProblemSchema),
    /** Headers of the file that are none of ours; their cells are not read. */
    ignoredHeaders: z.array(z.string()),
    headers: z.array(z.string()).meta({ description: "The file's headers, to map" }),
    mapping: billMappingSchema
      .nullable()
      .meta({ description: 'The columns as given, as remembered, or as guessed from the headers' }),
    missingColumns: z
      .array(z.enum(BILL_COLUMNS))
      .meta({ description: 'Columns without which nothing can be read: send a mapping that names them' }),
    isApplied: z.boolean(),
    version: z.number().int(),
  }),
  needsIfMatch: true,
  givesEtag: true,
  takesFile: true,
  example: {
    params: { id: exampleDesign.id },
    query: { preview: 'false' },
    answer: {
      bill: exampleBill,
      parameters: [],
      variants: [],
      problems: [],
      ignoredHeaders: [],
      headers: ['row', 'id', 'name'],
      mapping: { columns: { row: 'row', id: 'id', name: 'name' } },
      missingColumns: [],
      isApplied: true,
      version: 2,
    },
  },
});
