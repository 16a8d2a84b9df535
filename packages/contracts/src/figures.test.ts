import { entered, input, times, toTable } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { figureTableSchema, unitSchema, workingQuery } from './figures.ts';

const hours = input({ key: 'hours', label: 'Hours', unit: 'h', value: '3', source: entered() });
const rate = input({
  key: 'rate',
  label: 'Rate',
  unit: 'money/h',
  currency: 'EUR',
  value: '21.50',
  source: entered(),
});
const pay = times('Pay', rate, hours);

describe('the schema of figures', () => {
  it.each([true, false])('takes the tables that figures make (working: %s)', (withDerivations) => {
    const { figures } = toTable({ pay }, { withDerivations });
    expect(figureTableSchema.parse(figures)).toEqual(figures);
  });

  it('takes a unit per another and no invention', () => {
    expect(unitSchema.safeParse('money/bd ft').success).toBe(true);
    expect(unitSchema.safeParse('money/fathom').success).toBe(false);
  });

  it('sends derivations only when they are asked for', () => {
    expect(workingQuery.parse({})).toEqual({ working: false });
    expect(workingQuery.parse({ working: 'true' })).toEqual({ working: true });
  });
});
