import { describe, expect, it } from 'vitest';
import { lengthText, readLengthText } from './length-text.ts';

describe('a length in a field', () => {
  it.each([
    ['25.4', 'metric', '25.4'],
    ['25.4', 'imperial', '1"'],
    ['20.6375', 'imperial', '13/16"'],
    ['18', 'imperial', '18 mm'],
  ] as const)('%s mm stands in a %s field as %s, and reads back', (mm, system, text) => {
    expect(lengthText(mm, system)).toBe(text);
    expect(readLengthText(text, system)).toBe(mm);
  });

  it('takes a bare number in the unit of the field, and nothing as nothing', () => {
    expect(readLengthText('3/4', 'imperial')).toBe('19.05');
    expect(readLengthText('60cm', 'imperial')).toBe('600');
    expect([readLengthText('', 'metric'), lengthText(null, 'metric')]).toEqual(['', '']);
  });

  it('leaves what is no length to the server', () => {
    expect(readLengthText('thick', 'imperial')).toBe('thick');
  });
});
