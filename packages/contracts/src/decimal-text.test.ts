import { decimal } from '@scantling/decimals';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decimalText,
  moneyText,
  nonNegativeDecimalText,
  positiveDecimalText,
  shareText,
} from './decimal-text.ts';

const accepts = (schema: typeof decimalText, text: string) => schema.safeParse(text).success;

describe('decimal text', () => {
  it('takes what it says and nothing else', () => {
    expect(['0', '-0.25', '12.5', '007'].map((text) => accepts(decimalText, text))).toEqual(
      Array(4).fill(true),
    );
    const bad = ['', ' 1', '1,5', '.5', '1.', '1e3', 'NaN', '0x10', '+1', '١'];
    expect(bad.filter((text) => accepts(decimalText, text))).toEqual([]);
  });

  it('knows where the bounds are', () => {
    expect(['0', '0.00', '-1', '0.01'].map((text) => accepts(positiveDecimalText, text))).toEqual([
      false,
      false,
      false,
      true,
    ]);
    expect(['0', '-0', '3'].map((text) => accepts(nonNegativeDecimalText, text))).toEqual([
      true,
      false,
      true,
    ]);
    expect(['0', '1', '1.0', '0.999', '1.01', '-0.1'].map((text) => accepts(shareText, text))).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(['12.345678', '1.2345678'].map((text) => accepts(moneyText, text))).toEqual([true, false]);
  });

  it('takes only what the decimal type reads, and agrees with it on the sign', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^-?\d{1,6}(\.\d{1,6})?$/), (text) => {
        expect(accepts(decimalText, text)).toBe(true);
        expect(accepts(positiveDecimalText, text)).toBe(decimal(text).gt(0));
        if (accepts(shareText, text)) expect(decimal(text).gte(0) && decimal(text).lte(1)).toBe(true);
      }),
    );
  });

  it('tells how to write it', () => {
    const issue = shareText.safeParse('15 %').error?.issues[0];
    expect(issue).toMatchObject({
      message: 'is not a share from 0 to 1',
      params: { mend: expect.stringContaining('"0.15"') },
    });
  });
});
