import { roundDownToMultiple } from '@scantling/decimals';
import { at, type Operation } from './operation.ts';

/** The greatest multiple of the second input within the first: whole leaves, whole cuttings. */
export const roundDown: Operation = {
  name: 'round-down',
  inputs: [2, 2],
  evaluate: (values) => roundDownToMultiple(at(values, 0), at(values, 1)),
  phrase: (inputs) => `${at(inputs, 0)}, down to a multiple of ${at(inputs, 1)}`,
  formula: (inputs) => `(ROUNDDOWN(ROUND(${at(inputs, 0)}/${at(inputs, 1)},9),0)*${at(inputs, 1)})`,
};
