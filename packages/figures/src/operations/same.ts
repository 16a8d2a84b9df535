import { at, type Operation } from './operation.ts';

/** The same value under another label or in another place. */
export const same: Operation = {
  name: 'same',
  inputs: [1, 1],
  evaluate: (values) => at(values, 0),
  phrase: (inputs) => at(inputs, 0),
  formula: (inputs) => at(inputs, 0),
};
