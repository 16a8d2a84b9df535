import {
  boardFeet,
  boardFeetFromSurfaceMeasure,
  boardFeetOfVolume,
  boardFeetToBuy,
  bundleTally,
  CUBIC_INCHES_PER_BOARD_FOOT,
  faceAreaM2,
  GRADE_IDS,
  gradeRequirement,
  M3_PER_BOARD_FOOT,
  roughThickness,
  SOFTWOOD_SIZES,
  softwoodActualIn,
  squareFeet,
  surfaceMeasures,
} from '@scantling/units';
import { z } from 'zod';
import { number, numbers, runner } from '../checked-inputs.ts';

const board = { thicknessIn: number, widthIn: number, lengthFt: number };
const face = z.strictObject({ widthIn: number, lengthFt: number });

export const boardFeetRunner = runner(board, (size) => {
  const volume = boardFeetOfVolume(size);
  return {
    boardFeet: boardFeet(size),
    cubicInches: volume.times(CUBIC_INCHES_PER_BOARD_FOOT),
    cubicMetres: volume.times(M3_PER_BOARD_FOOT),
    boardFeetPerM3: M3_PER_BOARD_FOOT.pow(-1),
  };
});

export const netAndNominalRunner = runner(
  { pieces: number, nominal: z.strictObject(board), actual: z.strictObject(board) },
  ({ pieces, nominal, actual }) => ({
    nominalBoardFeet: boardFeet(nominal).times(pieces),
    actualBoardFeet: boardFeetOfVolume(actual).times(pieces),
  }),
);

export const surfaceMeasureRunner = runner(
  { boards: z.array(face), thicknessIn: number.optional() },
  ({ boards, thicknessIn }) => {
    const measured = surfaceMeasures(boards);
    return {
      countedLengthFt: measured.map((one) => one.countedLengthFt),
      exact: measured.map((one) => one.exact),
      surfaceMeasure: measured.map((one) => one.surfaceMeasure),
      boardFeet: measured.map((one) => boardFeetFromSurfaceMeasure(one.surfaceMeasure, thicknessIn ?? 1)),
    };
  },
);

export const bundleTallyRunner = runner({ boards: z.array(face), thicknessIn: number }, (inputs) => {
  const { boards } = bundleTally(inputs.boards, inputs.thicknessIn, 'dry');
  return { widthIn: boards.map((one) => one.widthIn), lengthFt: boards.map((one) => one.lengthFt) };
});

export const gradeRequirementRunner = runner({ surfaceMeasure: number }, ({ surfaceMeasure }) => ({
  ...Object.fromEntries(GRADE_IDS.map((id) => [id, gradeRequirement(id, surfaceMeasure)])),
}));

export const boardFeetToBuyRunner = runner({ netBoardFeet: number }, ({ netBoardFeet }) => ({
  ...Object.fromEntries(GRADE_IDS.map((id) => [id, boardFeetToBuy(netBoardFeet, id)])),
}));

export const softwoodActualRunner = runner({ nominalIn: numbers }, ({ nominalIn }) => ({
  actualIn: nominalIn.map(softwoodActualIn),
}));

export const softwoodSizesRunner = runner({ names: z.array(z.string()) }, ({ names }) => {
  const sizes = names.map((name) => SOFTWOOD_SIZES.find((size) => size.name === name));
  return { actualIn: sizes.map((size) => size?.actualIn), actualMm: sizes.map((size) => size?.actualMm) };
});

export const roughThicknessRunner = runner({ names: z.array(z.string()) }, ({ names }) => {
  const found = names.map(roughThickness);
  return {
    surfacedTwoSidesIn: found.map((one) => one?.surfacedTwoSidesIn),
    surfacedOneSideIn: found.map((one) => one?.surfacedOneSideIn),
  };
});

export const faceAreaRunner = runner({ sidesMm: z.array(z.tuple([number, number])) }, ({ sidesMm }) => {
  const areas = sidesMm.map(([length, width]) => faceAreaM2(length, width));
  return { m2: areas, squareFeet: areas.map(squareFeet) };
});
