import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureTableSchema, workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { exampleTool } from './tool.ts';
import { machineHourRateSchema } from './worked-machine-hour-rate.ts';

/** The year of the schedule that the book basis is for. */
export const bookYear = z.coerce.number().int().min(1900).max(2200);

export const getToolRates = defineContract({
  name: 'get-tool-rates',
  method: 'GET',
  path: '/api/tools/:id/rates',
  summary: 'Work out what an hour of a tool costs',
  description:
    'On three bases: book (what was paid), replacement (what pricing recovers), marginal (what another hour costs). The book basis is for the year named, this year where none is; a year before the tool came counts as its first.',
  tag: 'tools',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery.extend({ year: bookYear.optional() }),
  answer: z.strictObject({ rates: z.array(machineHourRateSchema), figures: figureTableSchema }),
  example: {
    params: { id: exampleTool.id },
    query: { working: 'true', year: 2026 },
    answer: { rates: [], figures: {} },
  },
});
