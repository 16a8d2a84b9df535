import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureTableSchema, workingQuery } from '../figures.ts';
import { recordParams } from '../record.ts';
import { exampleTool } from './tool.ts';
import { depreciationScheduleSchema } from './worked-schedule.ts';

export const getToolSchedule = defineContract({
  name: 'get-tool-schedule',
  method: 'GET',
  path: '/api/tools/:id/schedule',
  summary: 'Work out how the books write a tool off, year by year',
  description: 'By calendar year from when it came; refused for a hired tool: it is in no books here.',
  tag: 'tools',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  answer: z.strictObject({ schedule: depreciationScheduleSchema, figures: figureTableSchema }),
  example: {
    params: { id: exampleTool.id },
    query: { working: 'false' },
    answer: {
      schedule: {
        method: 'straight-line',
        methodLabel: 'straight line',
        caution: null,
        cost: 'cost',
        salvage: 'salvage',
        years: [
          { year: 2023, opening: 'cost', expense: 'years.2023.expense', closing: 'years.2023.closing' },
        ],
        total: 'total',
        disposal: null,
      },
      figures: {},
    },
  },
});
