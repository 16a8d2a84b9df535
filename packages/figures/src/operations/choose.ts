import { at, type Operation } from './operation.ts';

/** Where the first input reaches the second, the third; otherwise the fourth. Price breaks and switches. */
export const choose: Operation = {
  name: 'choose',
  inputs: [4, 4],
  evaluate: (values) => (at(values, 0).gte(at(values, 1)) ? at(values, 2) : at(values, 3)),
  phrase: (inputs) =>
    `${at(inputs, 2)} once ${at(inputs, 0)} reaches ${at(inputs, 1)}, else ${at(inputs, 3)}`,
  // ROUND guards the binary spreadsheet: 0.1 + 0.2 reaches 0.3 there too.
  formula: (inputs) => `IF(ROUND(${at(inputs, 0)}-${at(inputs, 1)},9)>=0,${at(inputs, 2)},${at(inputs, 3)})`,
};
