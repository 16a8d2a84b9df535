import type { DepreciationSchedule } from '@scantling/costing';
import type { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { figureId } from '../figures.ts';

/** A yearly schedule whose amounts are ids in the table of figures beside it. */
export const depreciationScheduleSchema = z
  .strictObject({
    method: z.string(),
    methodLabel: z.string(),
    caution: z.string().nullable(),
    cost: figureId,
    salvage: figureId,
    years: z.array(
      z.strictObject({ year: z.number().int(), opening: figureId, expense: figureId, closing: figureId }),
    ),
    total: figureId,
    /** null while the thing is in use. */
    disposal: z
      .strictObject({ year: z.number().int(), bookValue: figureId, proceeds: figureId, gain: figureId })
      .nullable(),
  })
  .meta({ id: 'DepreciationSchedule' });

export type WorkedSchedule = z.output<typeof depreciationScheduleSchema>;

/** Puts a schedule's figures into the table and answers their ids. */
export function toWorkedSchedule(schedule: DepreciationSchedule, table: FigureTableBuilder): WorkedSchedule {
  const { disposal } = schedule;
  return {
    method: schedule.method,
    methodLabel: schedule.methodLabel,
    caution: schedule.caution,
    cost: table.add('cost', schedule.cost),
    salvage: table.add('salvage', schedule.salvage),
    years: schedule.years.map(({ year, opening, expense, closing }) => ({
      year,
      opening: table.add(`years/${year}/opening`, opening),
      expense: table.add(`years/${year}/expense`, expense),
      closing: table.add(`years/${year}/closing`, closing),
    })),
    total: table.add('total', schedule.total),
    disposal:
      disposal === null
        ? null
        : {
            year: disposal.year,
            bookValue: table.add('disposal/book-value', disposal.bookValue),
            proceeds: table.add('disposal/proceeds', disposal.proceeds),
            gain: table.add('disposal/gain', disposal.gain),
          },
  };
}
