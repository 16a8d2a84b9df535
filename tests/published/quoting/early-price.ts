import { entered, input, number } from '@scantling/figures';
import { scaledBy } from '@scantling/quoting';
import type { Runner } from '../costing/runner.ts';

/** { cost, past, asked, exponent } -> the factor of scale and the cost of the size asked for. */
export const scaleLawRunner: Runner = ({ cost, past, asked, exponent }) => {
  const leaf = (key: string, value: unknown) =>
    input({ key, label: key, unit: 'm3', value: Number(value), source: entered() });
  const factor = scaledBy('factor', leaf('asked', asked), leaf('past', past), number(Number(exponent)));
  return { factor: factor.value, likelyCost: factor.value.times(Number(cost)) };
};
