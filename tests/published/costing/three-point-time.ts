import { threePointMean } from '@scantling/costing';
import { entered, input, sum } from '@scantling/figures';
import type { Runner } from './runner.ts';

/** { tasks: [[low, likely, high], ...] } -> the mean of each and of the whole. */
export const threePointMeanRunner: Runner = ({ tasks }) => {
  const means = (tasks as readonly (readonly number[])[]).map((three, index) => {
    const [low, likely, high] = three.map((value, place) =>
      input({ key: `${index}/${place}`, label: 'time', unit: 'h', value, source: entered() }),
    );
    if (!low || !likely || !high) throw new Error('a task has three times');
    return threePointMean('mean', { low, likely, high }, `tasks.${index}`);
  });
  return {
    means: Object.fromEntries(means.map((mean, index) => [index + 1, mean.value])),
    total: sum('total', 'h', means).value,
  };
};
