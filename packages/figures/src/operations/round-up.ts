import { roundUpToMultiple } from '@scantling/decimals';
import { at, type Operation } from './operation.ts';

/** The least multiple of the second input that covers the first: whole packs, whole boards. */
export const roundUp: Operation = {
  name: 'round-up',
  inputs: [2, 2],
  evaluate: (values) => roundUpToMultiple(at(values, 0), at(values, 1)),
  phrase: (inputs) => `${at(inputs, 0)}, up to a multiple of ${at(inputs, 1)}`,
  // ROUND guards the binary spreadsheet against 3.0000000001 packs; 9 places are far below any purchase unit.
  formula: (inputs) => `(ROUNDUP(ROUND(${at(inputs, 0)}/${at(inputs, 1)},9),0)*${at(inputs, 1)})`,
};
