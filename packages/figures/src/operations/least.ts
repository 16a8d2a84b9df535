import { Decimal } from '@scantling/decimals';
import type { Operation } from './operation.ts';

/** The least of the inputs. */
export const least: Operation = {
  name: 'least',
  evaluate: (values) => Decimal.min(...values),
  phrase: (inputs) => `the least of ${inputs.join(' and ')}`,
  formula: (inputs) => `MIN(${inputs.join(',')})`,
};
