import { describe, expect, it } from 'vitest';
import { leafEntry, leafValueProblem } from './leaf-entry.ts';

const from = { kind: 'shop-rate' } as const;
const ratio = (id: string) => ({ id, unit: 'ratio', source: from }) as const;

// No outside source: what each number is, as the records that keep it take it.
describe('another value for a leaf', () => {
  it.each([
    ['material/ash/yield', 'share', true, '1'],
    ['labour/owner/burden', 'share', false, undefined],
    ['terms/policy/labour', 'share', false, undefined],
    ['bill/part leg/quantity', 'count', true, undefined],
    ['bill/finish oil/coats', 'count', true, undefined],
    ['exchange-rate/EUR/2026-01-02', 'amount', true, undefined],
    ['parameter/drawers', 'amount', false, undefined],
  ] as const)('%s is entered as %s', (id, as, isAboveZero, most) => {
    expect(leafEntry(ratio(id))).toEqual({ as, isAboveZero, ...(most === undefined ? {} : { most }) });
  });

  it('is not asked for where a value holds by definition or is a column of its own', () => {
    const definition = { kind: 'definition' } as const;
    expect(leafEntry({ id: 'constant/two', unit: 'ratio', source: definition })).toBeNull();
    expect(leafEntry({ id: 'quantity/5', unit: 'ratio', source: { kind: 'entered' } })).toBeNull();
    expect(leafEntry({ id: 'pieces-1/price/net', unit: 'money' })).toBeNull();
  });

  it.each([
    ['material/ash/yield', '1.2', /more than the whole/],
    ['material/ash/yield', '0', /cannot be 0/],
    ['labour/owner/burden', '-0.1', /below 0/],
    ['bill/part leg/quantity', '2.5', /whole things/],
  ])('%s cannot be %s', (id, value, says) => {
    expect(leafValueProblem(ratio(id), value)?.message).toMatch(says);
    expect(leafValueProblem(ratio(id), value)?.mend).not.toBe('');
  });

  it('is taken where it can stand', () => {
    expect(leafValueProblem(ratio('labour/owner/burden'), '1.4')).toBeNull();
    const allowance = { id: 'allowance/rough-lumber/length', unit: 'mm', source: from } as const;
    expect(leafValueProblem(allowance, '0')).toBeNull();
  });
});
