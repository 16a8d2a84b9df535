import { firstUnitFrom, type LearningModel, learningTimes } from '@scantling/costing';
import type { Runner } from './runner.ts';

const context = { currency: 'USD' } as const;

/** { model, rate, firstUnitHours, units: [...] } -> total, average and last unit's hours for each count. */
export const learningCurveRunner: Runner = ({ model, rate, firstUnitHours, units }) => {
  const runs = (units as readonly number[]).map((count) => {
    const curve = {
      model: model as LearningModel,
      rate: Number(rate),
      firstUnitHours: Number(firstUnitHours),
    };
    return { count, times: learningTimes({ ...curve, units: count }, context) };
  });
  return {
    exponent: runs[0]?.times.exponent.value,
    total: Object.fromEntries(runs.map(({ count, times }) => [count, times.total.value])),
    average: Object.fromEntries(runs.map(({ count, times }) => [count, times.average.value])),
    lastUnit: Object.fromEntries(runs.map(({ count, times }) => [count, times.lastUnit.value])),
  };
};

/** { model, rate, unit, hours } -> the hours of the first unit. */
export const firstUnitRunner: Runner = ({ model, rate, unit, hours }) => ({
  firstUnit: firstUnitFrom(
    { model: model as LearningModel, rate: Number(rate), unit: Number(unit), hours: Number(hours) },
    context,
  ).value,
});
