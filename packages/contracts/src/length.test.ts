import { describe, expect, it } from 'vitest';
import { lengthText } from './length.ts';

describe('a written length', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, 2008, appendix B.8).
  it('is read to millimetres', () => {
    expect(lengthText('mm').parse('600')).toBe('600');
    expect(lengthText('in').parse('23 5/8')).toBe('600.075');
    expect(lengthText('mm').parse('1/64 in')).toBe('0.396875');
  });

  it('tells how to write one that cannot be read', () => {
    const issue = lengthText('mm').safeParse('12 ells').error?.issues[0];
    expect(issue?.message).toContain('ells');
    expect(issue).toMatchObject({ params: { mend: expect.stringContaining('600 mm') } });
  });
});
