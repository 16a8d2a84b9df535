import { z } from 'zod';

/** One thing wrong with the input, where, and what to do about it. */
export const fieldProblemSchema = z
  .strictObject({
    /** Path in the body ("parts.3.lengthMm"); "query.limit", "path.id" and "header.If-Match" elsewhere. */
    field: z.string(),
    message: z.string(),
    mend: z.string(),
  })
  .meta({ id: 'FieldProblem' });
export type FieldProblem = z.output<typeof fieldProblemSchema>;

/** Problem details after RFC 9457 (application/problem+json), with a stable code and the fields concerned. */
export const problemSchema = z
  .strictObject({
    type: z.string().meta({ description: 'Where the problem is described' }),
    title: z.string(),
    status: z.number().int(),
    detail: z.string(),
    /** The request's id, as it stands in the log. */
    instance: z.string(),
    code: z.string().meta({ description: 'Stable name of the problem, for programs' }),
    errors: z.array(fieldProblemSchema),
  })
  .meta({ id: 'Problem' });
export type Problem = z.output<typeof problemSchema>;

export const PROBLEM_MEDIA_TYPE = 'application/problem+json';
