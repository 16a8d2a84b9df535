import { type MachineHourRate, RATE_BASES, RATE_LINE_KINDS } from '@scantling/costing';
import type { Figure, FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { figureId } from '../figures.ts';

/** A machine-hour rate whose amounts are ids in the table of figures beside it. */
export const machineHourRateSchema = z
  .strictObject({
    basis: z.enum(RATE_BASES),
    lines: z.array(
      z.strictObject({
        id: z.string(),
        kind: z.enum(RATE_LINE_KINDS),
        group: z.enum(['owning', 'running']),
        label: z.string(),
        perHour: figureId,
        perYear: figureId,
      }),
    ),
    /** null for a hired tool and on the marginal basis. */
    averageInvestment: figureId.nullable(),
    life: figureId.nullable(),
    owningPerYear: figureId,
    owningPerHour: figureId,
    runningPerHour: figureId,
    perHour: figureId,
  })
  .meta({ id: 'MachineHourRate' });

export type WorkedMachineHourRate = z.output<typeof machineHourRateSchema>;

/** Puts a rate's figures into the table and answers their ids; the same work for a record and a calculation. */
export function toWorkedRate(
  rate: MachineHourRate,
  table: FigureTableBuilder,
  prefix: string,
): WorkedMachineHourRate {
  const add = (name: string, figure: Figure) => table.add(`${prefix}${name}`, figure);
  const addOr = (name: string, figure: Figure | null) => (figure === null ? null : add(name, figure));
  return {
    basis: rate.basis,
    lines: rate.lines.map((line) => ({
      id: line.id,
      kind: line.kind,
      group: line.group,
      label: line.label,
      perHour: add(`lines/${line.id}/per-hour`, line.perHour),
      perYear: add(`lines/${line.id}/per-year`, line.perYear),
    })),
    averageInvestment: addOr('average-investment', rate.averageInvestment),
    life: addOr('life', rate.life),
    owningPerYear: add('owning-per-year', rate.owningPerYear),
    owningPerHour: add('owning-per-hour', rate.owningPerHour),
    runningPerHour: add('running-per-hour', rate.runningPerHour),
    perHour: add('per-hour', rate.perHour),
  };
}
