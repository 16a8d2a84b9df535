import {
  boardFeetOfVolume,
  cubicFeet,
  densityKgM3,
  densityLbFt3,
  densityLbFt3FromOvenDry,
  findSpecies,
  lbPerBoardFoot,
  M3_PER_BOARD_FOOT,
  movement,
  movementCoefficient,
  shrinkagePercent,
  softwoodLumberShrinkage,
  softwoodWidthAt,
  specificGravityAt,
  weightKg,
  weightLb,
  widthByRuleOfThumb,
} from '@scantling/units';
import { z } from 'zod';
import { number, numbers, runner } from '../checked-inputs.ts';

const gravity = { specificGravity: number, moisturePercent: number };

export const densityRunner = runner(gravity, ({ specificGravity, moisturePercent }) => ({
  lbPerFt3: densityLbFt3(specificGravity, moisturePercent),
  kgPerM3: densityKgM3(specificGravity, moisturePercent),
}));

export const ovenDryDensityRunner = runner(gravity, ({ specificGravity, moisturePercent }) => ({
  lbPerFt3: densityLbFt3FromOvenDry(specificGravity, moisturePercent),
}));

export const boardWeightRunner = runner(
  { ...gravity, thicknessIn: number, widthIn: number, lengthFt: number },
  ({ specificGravity, moisturePercent, ...size }) => {
    const boardFeet = boardFeetOfVolume(size);
    const lbPerFt3 = densityLbFt3(specificGravity, moisturePercent);
    return {
      boardFeet,
      lbPerFt3,
      weightLb: weightLb(cubicFeet(boardFeet), lbPerFt3),
      weightKg: weightKg(boardFeet.times(M3_PER_BOARD_FOOT), densityKgM3(specificGravity, moisturePercent)),
    };
  },
);

export const specificGravityRunner = runner(
  { greenGravity: numbers, moisturePercent: number },
  ({ greenGravity, moisturePercent }) => ({
    specificGravity: greenGravity.map((green) => specificGravityAt(green, moisturePercent)),
  }),
);

export const speciesWeightRunner = runner({ species: z.array(z.string()) }, ({ species }) => {
  const densities = species.map((id) => {
    const found = findSpecies(id);
    if (found === undefined) throw new Error(`no species "${id}"`);
    return { gravity: found.gravityAt12, kgPerM3: densityKgM3(found.gravityAt12) };
  });
  return {
    gravity: densities.map((one) => one.gravity),
    kgPerM3: densities.map((one) => one.kgPerM3),
    lbPerBoardFoot: densities.map((one) => lbPerBoardFoot(one.kgPerM3)),
  };
});

export const movementRunner = runner(
  { size: number, coefficient: numbers, fromPercent: number, toPercent: number },
  ({ size, coefficient, fromPercent, toPercent }) => ({
    movement: coefficient.map((one) => movement(size, one, fromPercent, toPercent)),
  }),
);

export const speciesMovementRunner = runner(
  { widthIn: number, species: z.array(z.string()), fromPercent: number, toPercent: number },
  ({ widthIn, species, fromPercent, toPercent }) => ({
    movementIn: species.map((id) =>
      movement(widthIn, findSpecies(id)?.movementTangential ?? 0, fromPercent, toPercent),
    ),
  }),
);

export const movementCoefficientRunner = runner({ shrinkagePercent: numbers }, (inputs) => ({
  coefficient: inputs.shrinkagePercent.map(movementCoefficient),
}));

export const shrinkageRunner = runner(
  { ovenDryPercent: numbers, moisturePercent: number },
  ({ ovenDryPercent, moisturePercent }) => ({
    shrinkagePercent: ovenDryPercent.map((whole) => shrinkagePercent(whole, moisturePercent)),
  }),
);

export const softwoodShrinkageRunner = runner({ moisturePercent: number }, ({ moisturePercent }) => ({
  ...softwoodLumberShrinkage(moisturePercent),
}));

export const softwoodWidthRunner = runner(
  { size: number, fromPercent: number, toPercent: number },
  ({ size, fromPercent, toPercent }) => ({
    ruleOfThumb: widthByRuleOfThumb(size, fromPercent, toPercent),
    equation: softwoodWidthAt(size, fromPercent, toPercent),
  }),
);
