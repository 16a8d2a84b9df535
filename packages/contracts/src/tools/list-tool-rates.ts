import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureTableSchema, workingQuery } from '../figures.ts';
import { recordId } from '../record.ts';
import { bookYear } from './get-tool-rates.ts';
import { exampleTool } from './tool.ts';
import { machineHourRateSchema } from './worked-machine-hour-rate.ts';

export const listToolRates = defineContract({
  name: 'list-tool-rates',
  method: 'GET',
  path: '/api/tool-rates',
  summary: 'Work out what an hour of every tool costs',
  description:
    'All tools by code, each on three bases: book (what was paid), replacement (what pricing recovers), marginal (what another hour costs), with one table of figures. The book basis is for the year named, this year where none is; a year before a tool came counts as its first.',
  tag: 'tools',
  roles: 'anyone',
  query: workingQuery.extend({ year: bookYear.optional() }),
  answer: z.strictObject({
    tools: z.array(
      z.strictObject({
        /** The record. */
        id: recordId,
        code: z.string(),
        name: z.string(),
        rates: z.array(machineHourRateSchema),
      }),
    ),
    figures: figureTableSchema,
  }),
  example: {
    query: { working: 'false', year: 2026 },
    answer: {
      tools: [{ id: exampleTool.id, code: exampleTool.code, name: exampleTool.name, rates: [] }],
      figures: {},
    },
  },
});
