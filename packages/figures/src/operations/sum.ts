import { type Decimal, ZERO } from '@scantling/decimals';
import type { Operation } from './operation.ts';

/** All inputs added; an empty sum is nothing. */
export const sum: Operation = {
  name: 'sum',
  inputs: [0, Number.POSITIVE_INFINITY],
  evaluate: (values) =>
    values.reduce((total: Decimal | null, value) => total?.plus(value) ?? value, null) ?? ZERO,
  phrase: (inputs) => (inputs.length === 0 ? 'nothing to add' : inputs.join(' + ')),
  formula: (inputs) => (inputs.length === 0 ? '0' : `SUM(${inputs.join(',')})`),
};
