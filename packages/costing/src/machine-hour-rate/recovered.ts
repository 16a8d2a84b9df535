import { type Figure, sum } from '@scantling/figures';
import type { MachineHourRate } from './machine-hour-rate.ts';
import { RATE_LINE_KINDS, type RateLineKind } from './rate-line.ts';

/** What machine-hour rates recover in a year of one kind of cost. */
export interface RecoveredByMachines {
  readonly kind: RateLineKind;
  readonly perYear: Figure<'money/year'>;
}

/**
 * What the rates of all the shop's machines recover in a year at their own hours, by kind of cost. Machines
 * that run along are counted as themselves, so they must be among the rates; lines for them are left out.
 */
export function recoveredByMachines(rates: readonly MachineHourRate[]): RecoveredByMachines[] {
  return RATE_LINE_KINDS.filter((kind) => kind !== 'attached').flatMap((kind) => {
    const lines = rates.flatMap((rate) => rate.lines.filter((line) => line.kind === kind));
    if (lines.length === 0) return [];
    const label = `Machine-hour rates recover in a year: ${kind}`;
    return [
      {
        kind,
        perYear: sum(
          label,
          'money/year',
          lines.map((line) => line.perYear),
        ),
      },
    ];
  });
}
