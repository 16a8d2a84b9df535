import * as board from './board-measure.ts';
import * as measures from './measures.ts';
import * as wood from './wood.ts';

/** Who runs a check, by the name in its "function". */
export const UNITS_RUNNERS = {
  'units/board-feet': board.boardFeetRunner,
  'units/net-and-nominal-board-feet': board.netAndNominalRunner,
  'units/surface-measure': board.surfaceMeasureRunner,
  'units/bundle-tally': board.bundleTallyRunner,
  'units/grade-requirement': board.gradeRequirementRunner,
  'units/board-feet-to-buy': board.boardFeetToBuyRunner,
  'units/softwood-actual': board.softwoodActualRunner,
  'units/softwood-sizes': board.softwoodSizesRunner,
  'units/rough-thickness': board.roughThicknessRunner,
  'units/face-area': board.faceAreaRunner,
  'units/conversions': measures.conversionsRunner,
  'units/rec20-codes': measures.rec20Runner,
  'units/dimensional-weight': measures.dimensionalWeightRunner,
  'units/density': wood.densityRunner,
  'units/density-from-oven-dry': wood.ovenDryDensityRunner,
  'units/board-weight': wood.boardWeightRunner,
  'units/specific-gravity': wood.specificGravityRunner,
  'units/species-weight': wood.speciesWeightRunner,
  'units/movement': wood.movementRunner,
  'units/species-movement': wood.speciesMovementRunner,
  'units/movement-coefficient': wood.movementCoefficientRunner,
  'units/shrinkage': wood.shrinkageRunner,
  'units/softwood-lumber-shrinkage': wood.softwoodShrinkageRunner,
  'units/softwood-width': wood.softwoodWidthRunner,
};
