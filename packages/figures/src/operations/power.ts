import { at, type Operation } from './operation.ts';

/** The first input to the power of the second. */
export const power: Operation = {
  name: 'power',
  inputs: [2, 2],
  evaluate: (values) => at(values, 0).pow(at(values, 1)),
  phrase: (inputs) => `${at(inputs, 0)} to the power of ${at(inputs, 1)}`,
  formula: (inputs) => `POWER(${at(inputs, 0)},${at(inputs, 1)})`,
};
