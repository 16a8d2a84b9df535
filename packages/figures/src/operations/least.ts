import { Decimal } from '@scantling/decimals';
import type { Operation } from './operation.ts';

/** The least of the inputs. */
export const least: Operation = {
  name: 'least',
  inputs: [1, Number.POSITIVE_INFINITY],
  evaluate: (values) => Decimal.min(...values),
  phrase: (inputs) => `the least of ${inputs.join(' and ')}`,
  formula: (inputs) => `MIN(${inputs.join(',')})`,
};
