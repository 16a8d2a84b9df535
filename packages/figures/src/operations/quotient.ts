import { at, NoAnswerError, type Operation } from './operation.ts';

/** The first input divided by the second. */
export const quotient: Operation = {
  name: 'quotient',
  inputs: [2, 2],
  evaluate: (values) => {
    const divisor = at(values, 1);
    if (divisor.isZero()) throw new NoAnswerError('nothing can be divided by 0');
    return at(values, 0).div(divisor);
  },
  phrase: (inputs) => `${at(inputs, 0)} / ${at(inputs, 1)}`,
  formula: (inputs) => `(${at(inputs, 0)}/${at(inputs, 1)})`,
};
