import {
  type AcquisitionPart,
  acquisitionCost,
  type DepreciableAsset,
  type DepreciationMethod,
  depreciationSchedule,
  halfYearPercents,
} from '@scantling/costing';
import type { Runner } from './runner.ts';

const context = { currency: 'USD' } as const;

/** { method, asset } -> expense and bookValue by year, depreciable amount and total. */
export const scheduleRunner: Runner = ({ method, asset }) => {
  const schedule = depreciationSchedule(method as DepreciationMethod, asset as DepreciableAsset, context);
  return {
    expense: Object.fromEntries(schedule.years.map((line) => [line.year, line.expense.value])),
    bookValue: Object.fromEntries(schedule.years.map((line) => [line.year, line.closing.value])),
    lines: schedule.years.length,
    total: schedule.total.value,
  };
};

/** { recoveryYears, decliningPercent } -> one column of the table. */
export const taxTableRunner: Runner = ({ recoveryYears, decliningPercent }) => ({
  percent: halfYearPercents(Number(recoveryYears), Number(decliningPercent)),
});

/** { parts } -> cost. */
export const acquisitionCostRunner: Runner = ({ parts }) => ({
  cost: acquisitionCost(parts as readonly AcquisitionPart[], context).value,
});
