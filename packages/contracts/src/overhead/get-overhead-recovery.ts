import { HOMES } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureId, figureTableSchema, workingQuery } from '../figures.ts';
import { LOST_ENQUIRY_HOMES } from '../workshop/workshop-settings.ts';
import { exampleOverheadRate, overheadRateSchema } from './worked-overhead-rate.ts';

export const getOverheadRecovery = defineContract({
  name: 'get-overhead-recovery',
  method: 'GET',
  path: '/api/overhead/recovery',
  summary: 'Show where each yearly amount comes back',
  description:
    'The rates of both pools at planned and actual base, and the proof that each yearly amount has one home: amount = by machine-hour rates + by labour rates + in a pool + nowhere.',
  tag: 'overhead',
  roles: 'anyone',
  query: workingQuery,
  answer: z.strictObject({
    pools: z.array(overheadRateSchema),
    proof: z.strictObject({
      /** Every amount comes back once, and rates recover nothing that is no amount. */
      holds: z.boolean(),
      total: figureId,
      /** Total less all homes; 0 where the proof holds. */
      rest: figureId,
      homes: z.strictObject({
        'machine-rate': figureId,
        'labour-rate': figureId,
        'workshop-pool': figureId,
        'administration-pool': figureId,
      }),
      lines: z.array(
        z.strictObject({
          id: z.string(),
          name: z.string(),
          home: z.enum(HOMES),
          amount: figureId,
          byMachineRates: figureId,
          byLabourRates: figureId,
          inPool: figureId,
          nowhere: figureId,
        }),
      ),
      findings: z.array(
        z.strictObject({
          kind: z.enum(['twice', 'unrecovered', 'over-recovered', 'unpaid']),
          about: z.string(),
          message: z.string(),
        }),
      ),
    }),
    /** Hours on lost enquiries of the last twelve months, and where they come back; null where there are none. */
    lostEnquiries: z
      .strictObject({ home: z.enum(LOST_ENQUIRY_HOMES), hours: figureId, perYear: figureId })
      .nullable(),
    figures: figureTableSchema,
  }),
  example: {
    query: { working: 'false' },
    answer: {
      pools: [exampleOverheadRate],
      proof: {
        holds: true,
        total: 'total',
        rest: 'rest',
        homes: {
          'machine-rate': 'homes.machine-rate',
          'labour-rate': 'homes.labour-rate',
          'workshop-pool': 'homes.workshop-pool',
          'administration-pool': 'homes.administration-pool',
        },
        lines: [],
        findings: [],
      },
      lostEnquiries: null,
      figures: {},
    },
  },
});
