import { acquisitionCostRunner, scheduleRunner, taxTableRunner } from './depreciation.ts';
import { finishQuantityRunner, glueQuantityRunner } from './finish.ts';
import { jobCostRunner } from './job-cost.ts';
import { firstUnitRunner, learningCurveRunner } from './learning-curve.ts';
import { machineHourRateRunner } from './machine-hour-rate.ts';
import type { Runner } from './runner.ts';
import { labourRateRunner, overheadChargeRunner, overheadRateRunner } from './shop-rates.ts';
import { threePointMeanRunner } from './three-point-time.ts';

/** Who runs a check, by the name in its "function". */
export const COSTING_RUNNERS: Readonly<Record<string, Runner>> = {
  'costing/acquisition-cost': acquisitionCostRunner,
  'costing/depreciation-schedule': scheduleRunner,
  'costing/tax-table': taxTableRunner,
  'costing/machine-hour-rate': machineHourRateRunner,
  'costing/job-cost': jobCostRunner,
  'costing/labour-rate': labourRateRunner,
  'costing/overhead-rate': overheadRateRunner,
  'costing/overhead-charge': overheadChargeRunner,
  'costing/finish-quantity': finishQuantityRunner,
  'costing/glue-quantity': glueQuantityRunner,
  'costing/learning-curve': learningCurveRunner,
  'costing/learning-first-unit': firstUnitRunner,
  'costing/three-point-mean': threePointMeanRunner,
};
