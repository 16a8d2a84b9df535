import { expect, it } from 'vitest';
import { EMPTY_BILL } from '../bill-of-materials/index.ts';
import type { DrawnDesign } from './drawn-bill.ts';
import type { Parameter } from './parameter.ts';
import { sizeDesign } from './size-design.ts';

const formula = (text: string) => ({ formula: text });
const LENGTH: Parameter = { id: 'length', label: 'Length', kind: 'length', value: '1200' };
const RAIL: Parameter = {
  id: 'rail',
  label: 'Rail',
  kind: 'length',
  value: formula('length - 2'),
  least: '254',
  greatest: '600',
};
const TOP = {
  id: 'top',
  name: 'Top',
  quantity: 1,
  material: 'OAK-4',
  length: formula('length - 48'),
  width: '300',
  thickness: '19',
  grain: 'length',
  facesFinished: 'all',
} as const;

function told(design: Partial<DrawnDesign>, unit: 'mm' | 'in', length: string): string[] {
  const parameters = [{ ...LENGTH, value: length }, ...(design.parameters ?? [])];
  const whole = { bill: EMPTY_BILL, variants: [], ...design, parameters };
  return sizeDesign(whole, {}, unit).problems.map(
    ({ field, message, mend }) => `${field} ${message}; ${mend}`,
  );
}

it('are told in inches in a design in inches, with the millimetres where inches are not exact', () => {
  const rail = { parameters: [RAIL] };
  // 12 in - 2 in = 10 in = 254 mm: on the bound.
  expect(told(rail, 'in', '304.8')).toEqual([]);
  expect(told(rail, 'in', '279.4')).toEqual([
    'parameters.1.value is 9", less than 10"; enter a length in inches from 10" up to ≈ 23 5/8" (600 mm)',
  ]);
});

it('are told in millimetres in a design in millimetres', () => {
  expect(told({ parameters: [RAIL] }, 'mm', '1202')).toEqual([
    'parameters.1.value is 1200, more than 600; enter a length in mm from 254 up to 600',
  ]);
});

it('of a part are told in the unit of the design too', () => {
  const bill = { ...EMPTY_BILL, parts: [TOP] };
  expect(told({ bill }, 'in', '1016')[0]).toContain('comes to -8", where more than 0 is wanted');
  expect(told({ bill }, 'mm', '40')[0]).toContain('comes to -8, where more than 0 is wanted');
});
