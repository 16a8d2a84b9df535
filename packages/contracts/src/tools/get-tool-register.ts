import { ACQUISITIONS } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureId, figureTableSchema, workingQuery } from '../figures.ts';
import { bookYear } from './get-tool-rates.ts';

const amounts = {
  opening: figureId,
  addition: figureId,
  depreciation: figureId,
  disposed: figureId,
  closing: figureId,
};

export const toolRegisterSchema = z
  .strictObject({
    year: z.number().int(),
    rows: z.array(
      z.strictObject({
        code: z.string(),
        name: z.string(),
        acquisition: z.enum(ACQUISITIONS),
        method: z.string(),
        ...amounts,
        /** Proceeds less book value in the year it went; null in the others. */
        gain: figureId.nullable(),
      }),
    ),
    totals: z.strictObject({ ...amounts, gain: figureId }),
    /** Hired tools: used, but in nobody's books here. */
    leftOut: z.array(z.string()),
    note: z.string(),
    figures: figureTableSchema,
  })
  .meta({ id: 'ToolRegister' });
export type ToolRegisterAnswer = z.output<typeof toolRegisterSchema>;

export const getToolRegister = defineContract({
  name: 'get-tool-register',
  method: 'GET',
  path: '/api/tool-register',
  summary: 'Read the register of tools of one year',
  description: 'Opening, additions, depreciation, disposals and closing book value of every owned tool.',
  tag: 'tools',
  roles: 'anyone',
  query: workingQuery.extend({ year: bookYear }),
  answer: toolRegisterSchema,
  example: {
    query: { year: 2026, working: 'false' },
    answer: {
      year: 2026,
      rows: [],
      totals: {
        opening: 'total.opening',
        addition: 'total.addition',
        depreciation: 'total.depreciation',
        disposed: 'total.disposed',
        closing: 'total.closing',
        gain: 'total.gain',
      },
      leftOut: [],
      note: '',
      figures: {},
    },
  },
});
