import type { DepreciationSchedule } from '@scantling/costing';
import type { Figure, FigureTableBuilder } from '@scantling/figures';
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
export function toWorkedSchedule(
  schedule: DepreciationSchedule,
  table: FigureTableBuilder,
  prefix = '',
): WorkedSchedule {
  const { disposal } = schedule;
  const add = (name: string, figure: Figure) => table.add(`${prefix}${name}`, figure);
  return {
    method: schedule.method,
    methodLabel: schedule.methodLabel,
    caution: schedule.caution,
    cost: add('cost', schedule.cost),
    salvage: add('salvage', schedule.salvage),
    years: schedule.years.map(({ year, opening, expense, closing }) => ({
      year,
      opening: add(`years/${year}/opening`, opening),
      expense: add(`years/${year}/expense`, expense),
      closing: add(`years/${year}/closing`, closing),
    })),
    total: add('total', schedule.total),
    disposal:
      disposal === null
        ? null
        : {
            year: disposal.year,
            bookValue: add('disposal/book-value', disposal.bookValue),
            proceeds: add('disposal/proceeds', disposal.proceeds),
            gain: add('disposal/gain', disposal.gain),
          },
  };
}
