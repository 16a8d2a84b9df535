import { ENQUIRY_SOURCES } from '@scantling/quoting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureId, figureTableSchema, workingQuery } from '../figures.ts';
import { calendarDate } from '../record.ts';

const resultSchema = z.strictObject({
  received: figureId,
  /** Neither won nor lost yet. */
  undecided: figureId,
  won: figureId,
  lost: figureId,
  /** Won of those decided; null where none is. */
  winRate: figureId.nullable(),
  hoursPerWon: figureId.nullable(),
  hoursPerLost: figureId.nullable(),
});

const count = (label: string, value: string) => ({
  id: label,
  label,
  unit: 'ratio' as const,
  currency: null,
  value,
});

export const getEnquiryResults = defineContract({
  name: 'get-enquiry-results',
  method: 'GET',
  path: '/api/enquiries/results',
  summary: 'Show what came of the enquiries, by source',
  description:
    'How many were received, won and lost, the win rate, and the hours an enquiry takes when it is won or lost. `from` counts those received from that day on.',
  tag: 'enquiries',
  roles: 'anyone',
  query: workingQuery.extend({ from: calendarDate.optional() }),
  answer: z.strictObject({
    sources: z.array(resultSchema.extend({ source: z.enum(ENQUIRY_SOURCES) })),
    all: resultSchema,
    figures: figureTableSchema,
  }),
  example: {
    query: { working: 'false' },
    answer: {
      sources: [],
      all: {
        received: 'received',
        undecided: 'undecided',
        won: 'won',
        lost: 'lost',
        winRate: null,
        hoursPerWon: null,
        hoursPerLost: null,
      },
      figures: {
        received: count('received', '1'),
        undecided: count('undecided', '1'),
        won: count('won', '0'),
        lost: count('lost', '0'),
      },
    },
  },
});
