import { type Decimal, ONE } from '@scantling/decimals';
import type { Operation } from './operation.ts';

/** All inputs multiplied. */
export const product: Operation = {
  name: 'product',
  inputs: [0, Number.POSITIVE_INFINITY],
  evaluate: (values) =>
    values.reduce((total: Decimal | null, value) => total?.times(value) ?? value, null) ?? ONE,
  phrase: (inputs) => inputs.join(' x '),
  formula: (inputs) => `(${inputs.join('*')})`,
};
