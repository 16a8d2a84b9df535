import { COST_BASES, HOURLY_BASES, OVERHEAD_POOLS, type OverheadRate } from '@scantling/costing';
import type { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { figureId } from '../figures.ts';

/** A pool's rate whose amounts are ids in the table of figures beside it. */
export const overheadRateSchema = z
  .strictObject({
    kind: z.enum(OVERHEAD_POOLS),
    name: z.string(),
    base: z.enum([...HOURLY_BASES, ...COST_BASES]),
    /** Planned amounts less what rates recover. */
    net: figureId,
    rate: figureId,
    /** The year as it went; null while it is not known. */
    actual: z
      .strictObject({
        rate: figureId,
        recovered: figureId,
        underRecovered: figureId,
        spending: figureId,
        volume: figureId,
      })
      .nullable(),
  })
  .meta({ id: 'OverheadRate' });

export const exampleOverheadRate = {
  kind: 'workshop',
  name: 'Workshop overhead',
  base: 'productive-hours',
  net: 'workshop.net',
  rate: 'workshop.rate',
  actual: null,
} as const;

export type WorkedOverheadRate = z.output<typeof overheadRateSchema>;

/** Puts a pool's figures into the table and answers their ids. */
export function toWorkedOverheadRate(rate: OverheadRate, table: FigureTableBuilder): WorkedOverheadRate {
  const { kind, name, base, actual } = rate;
  const id = (part: string) => `${kind}/${part}`;
  return {
    kind,
    name,
    base,
    net: table.add(id('net'), rate.net),
    rate: table.add(id('rate'), rate.rate),
    actual:
      actual === null
        ? null
        : {
            rate: table.add(id('actual/rate'), actual.rate),
            recovered: table.add(id('actual/recovered'), actual.recovered),
            underRecovered: table.add(id('actual/under-recovered'), actual.underRecovered),
            spending: table.add(id('actual/spending'), actual.spending),
            volume: table.add(id('actual/volume'), actual.volume),
          },
  };
}
