import { Decimal } from '@scantling/decimals';
import type { Operation } from './operation.ts';

/** The greatest of the inputs. */
export const greatest: Operation = {
  name: 'greatest',
  inputs: [1, Number.POSITIVE_INFINITY],
  evaluate: (values) => Decimal.max(...values),
  phrase: (inputs) => `the greatest of ${inputs.join(' and ')}`,
  formula: (inputs) => `MAX(${inputs.join(',')})`,
};
