import { at, NoAnswerError, type Operation } from './operation.ts';

/** The logarithm of the first input to the base of the second. */
export const logarithm: Operation = {
  name: 'logarithm',
  inputs: [2, 2],
  evaluate: (values) => {
    const value = at(values, 0);
    if (value.lte(0)) throw new NoAnswerError('only a number above 0 has a logarithm');
    return value.log(at(values, 1));
  },
  phrase: (inputs) => `log of ${at(inputs, 0)} to base ${at(inputs, 1)}`,
  formula: (inputs) => `LOG(${at(inputs, 0)},${at(inputs, 1)})`,
};
