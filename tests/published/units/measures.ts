import * as units from '@scantling/units';
import { z } from 'zod';
import { number, numbers, runner } from '../checked-inputs.ts';

export const conversionsRunner = runner({}, () => ({
  inchMm: units.MM_PER_INCH,
  footM: units.M_PER_FOOT,
  poundKg: units.KG_PER_POUND,
  gallonL: units.LITRES_PER_GALLON,
  squareFootM2: units.M2_PER_SQUARE_FOOT,
  lbFt3KgM3: units.KG_M3_PER_LB_FT3,
  milUm: units.MICROMETRES_PER_MIL,
  cubicFootL: units.M3_PER_CUBIC_FOOT.times(1000),
}));

export const rec20Runner = runner({ names: z.array(z.string()) }, ({ names }) => ({
  codes: names.map((name) => (units.isRec20Name(name) ? units.REC20_CODES[name] : undefined)),
}));

export const dimensionalWeightRunner = runner(
  { length: number, width: number, height: number, divisors: numbers },
  ({ divisors, ...size }) => {
    const found = divisors.map((divisor) => units.dimensionalWeight(size, divisor));
    return {
      volume: found[0]?.volume,
      exact: found.map((one) => one.exact),
      weight: found.map((one) => one.weight),
    };
  },
);
