import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { costDifferenceSchema } from '../cost-sheets/cost-difference.ts';
import { figureId, figureTableSchema, workingQuery } from '../figures.ts';
import { calendarDate, recordId, recordParams } from '../record.ts';
import { exampleRevision } from './quote.ts';
import { partId } from './quote-terms.ts';

const sideSchema = z.strictObject({ cost: figureId, profit: figureId, margin: figureId.nullable() });

export const quoteTodaySchema = z
  .strictObject({
    sentOn: calendarDate,
    today: calendarDate,
    /** With the lines that count: what was accepted, else what nothing chosen leaves. */
    whenSent: sideSchema,
    now: sideSchema,
    /** How much dearer it has become for us; below 0 where it is cheaper. */
    costMoved: figureId,
    /** Why the lines that count and are made from designs cost another amount now, leaf by leaf. */
    difference: costDifferenceSchema,
    lines: z.array(
      z.strictObject({
        id: partId,
        description: z.string(),
        costSheetId: recordId,
        costThen: figureId,
        costNow: figureId.nullable(),
        /** Why it cannot be costed today; its cost then stands in for it. */
        problem: z.string().nullable(),
      }),
    ),
    figures: figureTableSchema,
  })
  .meta({ id: 'QuoteToday' });
export type QuoteToday = z.output<typeof quoteTodaySchema>;

const figure = (id: string, label: string, value: string, unit: 'money' | 'ratio' = 'money') => ({
  id,
  label,
  unit,
  currency: unit === 'money' ? ('EUR' as const) : null,
  value,
});

export const compareQuote = defineContract({
  name: 'compare-quote',
  method: 'GET',
  path: '/api/quote-revisions/:id/today',
  summary: 'Compare what was sent with today',
  description:
    'The same work costed again at today’s prices and rates, compared leaf by leaf with what was frozen, with the cause of each change and the money it moved, and the margin then and now. Nothing that was sent changes.',
  tag: 'quotes',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery,
  answer: quoteTodaySchema,
  example: {
    params: { id: exampleRevision.id },
    answer: {
      sentOn: '2026-03-01',
      today: '2026-03-20',
      whenSent: { cost: 'then/cost', profit: 'then/profit', margin: 'then/margin' },
      now: { cost: 'now/cost', profit: 'now/profit', margin: 'now/margin' },
      costMoved: 'cost-moved',
      difference: {
        currency: 'EUR',
        was: { cost: 'then/cost', price: 'then/cost' },
        now: { cost: 'now/cost', price: 'now/cost' },
        moved: { cost: 'cost-moved', price: 'cost-moved' },
        causes: [],
        rounding: { cost: 'cost-moved', price: 'cost-moved' },
      },
      lines: [],
      figures: {
        'then/cost': figure('then/cost', 'cost when sent', '1834'),
        'then/profit': figure('then/profit', 'left after all costs when sent', '906'),
        'then/margin': figure('then/margin', 'margin when sent', '0.3307', 'ratio'),
        'now/cost': figure('now/cost', 'cost today', '1901'),
        'now/profit': figure('now/profit', 'left after all costs today', '839'),
        'now/margin': figure('now/margin', 'margin today', '0.3062', 'ratio'),
        'cost-moved': figure('cost-moved', 'cost has moved by', '67'),
      },
    },
  },
});
