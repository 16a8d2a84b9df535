import { machineHourRate, type RateBasis, type Tool } from '@scantling/costing';
import type { Runner } from './runner.ts';

/** { tool, basis, averageInvestment? } -> the rate and its lines; floor and electricity are 0 in the sources used. */
export const machineHourRateRunner: Runner = ({ tool, basis, averageInvestment }) => {
  const rate = machineHourRate(tool as Tool, basis as RateBasis, {
    context: { currency: 'USD' },
    shop: { floorCostPerM2: 0, electricityPerKwh: 0 },
    averageInvestment: averageInvestment === 'simple' ? 'simple' : 'forestry',
  });
  return {
    averageInvestment: rate.averageInvestment?.value,
    owningPerYear: rate.owningPerYear.value,
    owningPerHour: rate.owningPerHour.value,
    runningPerHour: rate.runningPerHour.value,
    linesPerYear: Object.fromEntries(rate.lines.map((line) => [line.id, line.perYear.value])),
    linesPerHour: Object.fromEntries(rate.lines.map((line) => [line.id, line.perHour.value])),
  };
};
