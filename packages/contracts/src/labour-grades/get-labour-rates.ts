import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureId, figureTableSchema, workingQuery } from '../figures.ts';

export const getLabourRates = defineContract({
  name: 'get-labour-rates',
  method: 'GET',
  path: '/api/labour-rates',
  summary: 'Work out what an hour of each labour grade costs',
  description: 'Pay and burden of a paid hour, over the productive share: what a job is charged.',
  tag: 'labour-grades',
  roles: 'anyone',
  query: workingQuery,
  answer: z.strictObject({
    rates: z.array(
      z.strictObject({
        gradeId: z.string(),
        code: z.string(),
        name: z.string(),
        isOwner: z.boolean(),
        pay: figureId,
        paidHour: figureId,
        perHour: figureId,
      }),
    ),
    figures: figureTableSchema,
  }),
  example: { query: { working: 'true' }, answer: { rates: [], figures: {} } },
});
