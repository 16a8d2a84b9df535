import { at, type Operation } from './operation.ts';

/** The first input less the second. */
export const difference: Operation = {
  name: 'difference',
  inputs: [2, 2],
  evaluate: (values) => at(values, 0).minus(at(values, 1)),
  phrase: (inputs) => `${at(inputs, 0)} - ${at(inputs, 1)}`,
  formula: (inputs) => `(${at(inputs, 0)}-${at(inputs, 1)})`,
};
