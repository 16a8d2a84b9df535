import type { Figure } from '@scantling/figures';
import { perHour, perYear } from './tool-figures.ts';

/** What a line of a machine-hour rate pays for; also how yearly amounts are matched with what rates recover. */
export const RATE_LINE_KINDS = [
  'hire',
  'depreciation',
  'interest',
  'insurance',
  'floor',
  'power',
  'maintenance',
  'cutters',
  'attached',
] as const;
export type RateLineKind = (typeof RATE_LINE_KINDS)[number];

/** One line of a machine-hour rate. */
export interface RateLine {
  /** Unique in the rate: the kind, and what it is of where there are several ("cutters/blade"). */
  readonly id: string;
  readonly kind: RateLineKind;
  /** Owning costs come with the year, running costs with the hour. */
  readonly group: 'owning' | 'running';
  readonly label: string;
  readonly perHour: Figure<'money/h'>;
  readonly perYear: Figure<'money/year'>;
}

type Naming = Pick<RateLine, 'id' | 'kind' | 'label'>;

/** A cost that comes with the year, spread over the machine's own hours. */
export function owningLine(naming: Naming, yearly: Figure<'money/year'>, hours: Figure<'h/year'>): RateLine {
  return {
    ...naming,
    group: 'owning',
    perHour: perHour(`${naming.label}, by the hour`, yearly, hours),
    perYear: yearly,
  };
}

/** A cost that comes with the hour. */
export function runningLine(naming: Naming, hourly: Figure<'money/h'>, hours: Figure<'h/year'>): RateLine {
  return {
    ...naming,
    group: 'running',
    perHour: hourly,
    perYear: perYear(`${naming.label}, in a year`, hourly, hours),
  };
}
