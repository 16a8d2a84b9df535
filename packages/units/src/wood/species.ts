/** `seen` in a mirror of the printed table or one derived from it; `memory`: recalled, not seen. */
export type ValueStatus = 'seen' | 'memory';

type Shrinkage = readonly [radial: string, tangential: string, volumetric: string];

export interface Species {
  readonly id: string;
  readonly label: string;
  /** Oven-dry mass on green volume. */
  readonly gravityGreen: string;
  /** Oven-dry mass on volume at 12 % moisture. */
  readonly gravityAt12: string;
  readonly gravityAt12Status: ValueStatus;
  /** Green to oven-dry, %. */
  readonly shrinkagePercent: Shrinkage;
  readonly shrinkageStatus: ValueStatus;
  /** Change of size per % of moisture from 6 to 14 %. */
  readonly movementRadial: string;
  readonly movementRadialStatus: ValueStatus;
  readonly movementTangential: string;
  readonly movementTangentialStatus: ValueStatus;
}

/** Short marks for the table. */
export const V = 'seen';
export const M = 'memory';
type Marked = readonly [value: string, status: ValueStatus];

/** One row: values with their status, shrinkage as radial, tangential, volumetric %. */
export function species(
  id: string,
  label: string,
  gravityGreen: string,
  gravityAt12: Marked,
  shrinkage: readonly [Shrinkage, ValueStatus],
  radial: Marked,
  tangential: Marked,
): Species {
  return {
    id,
    label,
    gravityGreen,
    gravityAt12: gravityAt12[0],
    gravityAt12Status: gravityAt12[1],
    shrinkagePercent: shrinkage[0],
    shrinkageStatus: shrinkage[1],
    movementRadial: radial[0],
    movementRadialStatus: radial[1],
    movementTangential: tangential[0],
    movementTangentialStatus: tangential[1],
  };
}
