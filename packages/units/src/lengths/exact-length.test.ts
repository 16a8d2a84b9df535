import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactLength } from './exact-length.ts';
import { parseLength } from './parse-length.ts';

describe('a length written exactly', () => {
  it.each([
    // 13/16 in is what two planed faces leave of 4/4 (NHLA Rules Book, from memory).
    ['20.6375', 'imperial', '13/16"'],
    ['2438.4', 'imperial', '96"'],
    ['0.396875', 'imperial', '1/64"'],
    ['18', 'imperial', '18 mm'],
    ['20.6375', 'metric', '20.6375 mm'],
  ] as const)('%s mm is %s %s', (mm, system, text) => {
    expect(exactLength(mm, system)).toBe(text);
  });

  it('reads back as itself, whatever the length', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9_000_000_000 }),
        fc.constantFrom('metric', 'imperial'),
        (millionths, system) => {
          const mm = String(millionths)
            .padStart(7, '0')
            .replace(/(\d{6})$/, '.$1');
          const unit = system === 'metric' ? 'mm' : 'in';
          expect(parseLength(exactLength(mm, system), unit).eq(mm)).toBe(true);
        },
      ),
    );
  });
});
