import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from './canonical-text.ts';

describe('canonicalText', () => {
  it('writes the sample of RFC 8785 as the RFC does', () => {
    // RFC 8785, sections 3.2.2 and 3.2.3, from memory.
    const sample = JSON.parse(
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
        '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
    );
    expect(canonicalText(sample)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
    const sorted = JSON.parse(
      '{"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\ufb33":"Hebrew Letter Dalet With Dagesh",' +
        '"1":"One","\\ud83d\\ude00":"Emoji: Grinning Face","\\u0080":"Control","\\u00f6":"Latin Small Letter O With Diaeresis"}',
    );
    expect(Object.values(JSON.parse(canonicalText(sorted))).sort()).toEqual(Object.values(sorted).sort());
    const order = [...canonicalText(sorted).matchAll(/:"([A-Z][a-z]+)/g)].map((match) => match[1]);
    expect(order).toEqual(['Carriage', 'One', 'Control', 'Latin', 'Euro', 'Emoji', 'Hebrew']);
  });

  it('is the same however the fields are ordered, and reads back as the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalText({ value });
        // -0 is written as 0 in JSON, as in the RFC.
        expect(text).toBe(canonicalText(JSON.parse(text)));
        expect(JSON.stringify(JSON.parse(text).value)).toHaveLength(JSON.stringify(value).length);
      }),
    );
    expect(canonicalText({ b: 1, a: [{ d: null, c: 'x' }] })).toBe('{"a":[{"c":"x","d":null}],"b":1}');
  });
});
