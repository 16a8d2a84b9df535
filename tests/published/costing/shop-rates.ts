import {
  type LabourGrade,
  labourRate,
  type OverheadPool,
  type OverheadRate,
  overheadCharge,
  overheadRate,
} from '@scantling/costing';
import { entered, input } from '@scantling/figures';
import type { Runner } from './runner.ts';

const context = { currency: 'USD' } as const;

/** { grade } -> a paid hour and a productive hour. */
export const labourRateRunner: Runner = ({ grade }) => {
  const { paidHour, perHour } = labourRate(grade as LabourGrade, context);
  return { paidHour: paidHour.value, perHour: perHour.value };
};

/** { pool } -> net amount, rate, and what the year came to. */
export const overheadRateRunner: Runner = ({ pool }) => {
  const { net, rate, actual } = overheadRate(pool as OverheadPool, context);
  return {
    net: net.value,
    rate: rate.value,
    recovered: actual?.recovered.value,
    underRecovered: actual?.underRecovered.value,
  };
};

/** { pool, quantities } -> the rate, and the charge for each quantity of hours or money. */
export const overheadChargeRunner: Runner = ({ pool, quantities }) => {
  const rate = overheadRate(pool as OverheadPool, context);
  return {
    rate: rate.rate.value,
    charges: (quantities as readonly number[]).map((value) => charge(rate, value)),
  };
};

function charge(rate: OverheadRate, value: number) {
  const leaf = { key: 'quantity', label: 'quantity', value, source: entered() };
  return rate.base === 'productive-hours' || rate.base === 'machine-hours'
    ? overheadCharge('charge', rate, input({ ...leaf, unit: 'h' })).value
    : overheadCharge('charge', rate, input({ ...leaf, unit: 'money', currency: 'USD' })).value;
}
