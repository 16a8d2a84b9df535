import { exampleParameters, exampleVariants } from '@scantling/contracts';
import type { Parameter } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import {
  asDrawn,
  awayWords,
  baseValue,
  type DesignChoice,
  isSameChoice,
  readValue,
  valueText,
  withValue,
} from './design-choice.ts';

const [length] = exampleParameters;
if (length === undefined) throw new Error('the example has a parameter');
const drawers: Parameter = { id: 'drawers', label: 'Drawers', kind: 'count', value: '4' };
const drawing = { parameters: [length, drawers], variants: [...exampleVariants] };
const drawn: DesignChoice = { revision: null, variant: null, parameterValues: {} };
const long: DesignChoice = { ...drawn, variant: 'long' };

describe('what is chosen of a design', () => {
  it('is kept only where it differs from the variant', () => {
    expect(withValue(long, drawing, length, '1350.0').parameterValues).toEqual({});
    const longer = withValue(long, drawing, length, '1500');
    expect(longer.parameterValues).toEqual({ length: '1500' });
    expect(withValue(longer, drawing, length, '1350').parameterValues).toEqual({});
    expect(baseValue(drawing, length, null)).toBe('1200');
    expect(baseValue(drawing, { ...length, value: { formula: '1' } }, null)).toBeNull();
  });

  it('is the same whatever the order of its values', () => {
    const one = { ...drawn, parameterValues: { a: '1', b: '2' } };
    expect(isSameChoice(one, { ...drawn, parameterValues: { b: '2', a: '1' } })).toBe(true);
    expect(isSameChoice(one, drawn)).toBe(false);
    expect(asDrawn({ ...one, revision: 2 })).toEqual({ ...drawn, revision: 2 });
  });

  it('is typed and read in the unit of the design', () => {
    expect(readValue(length, `53 1/8"`, 'imperial')).toEqual({ value: '1349.375' });
    expect(readValue(length, '1350', 'metric')).toEqual({ value: '1350' });
    expect(readValue(length, 'long', 'metric')).toHaveProperty('error');
    expect(readValue(drawers, 'five', 'metric')).toHaveProperty('error');
    expect(valueText(length, '1349.375', 'imperial')).toBe('53 1/8"');
    expect(valueText(length, '1350', 'imperial')).toBe('1350 mm');
    expect(valueText(drawers, '5', 'metric')).toBe('5');
  });

  it('says how far it is from what was drawn', () => {
    expect(awayWords(length, '1350', '1200', 'metric')).toBe('+150 mm');
    expect(awayWords(length, '1200', '1200.0', 'metric')).toBeNull();
    expect(awayWords(drawers, '3', '4', 'metric')).toBe('−1');
  });
});
