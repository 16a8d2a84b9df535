import { expect, it } from 'vitest';
import { inImperial } from './in-imperial.ts';

it('writes lengths in inches and areas in square feet, and leaves the rest', () => {
  expect(inImperial({ unit: 'mm', value: '600.075' }, 'en')?.text).toBe('23 5/8"');
  // A square foot is 0.09290304 m2 (international yard and pound agreement).
  expect(inImperial({ unit: 'm2', value: '0.13935456' }, 'en')?.text).toBe('1.50 ft²');
  expect(inImperial({ unit: 'kg', value: '2' }, 'en')).toBeNull();
});
