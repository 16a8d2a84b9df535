import { exampleTool, exampleToolInput, toolInputSchema, workshopSettingsSchema } from '@scantling/contracts';
import { describe, expect, test } from 'vitest';
import { freshTool, toolInput, toolValues } from './tool-values.ts';

type Depreciation = Parameters<typeof toolValues>[0]['depreciation'];

const fresh = freshTool(workshopSettingsSchema.parse({ interestRate: '0.035' }), '2026-03-01');

describe('a tool through its form', () => {
  test('comes back as it was read', () => {
    const read = toolInput(
      toolValues({ ...exampleTool, cutters: [...exampleTool.cutters], attached: [] }, fresh),
    );
    expect(read).toEqual(exampleToolInput);
  });

  test.each<Depreciation>([
    { name: 'sum-of-years-digits' },
    { name: 'declining-balance', factor: '1.5', hasSwitch: false },
    { name: 'tax-table', recoveryYears: 5, decliningPercent: 150 },
    { name: 'units-of-production' },
    { name: 'units-of-production', hoursByYear: ['120', '340.5'] },
  ])('keeps the method %o', (depreciation) => {
    const tool = { ...exampleTool, cutters: [], attached: ['DUST'], depreciation };
    expect(toolInput(toolValues(tool, fresh))).toMatchObject({ depreciation, attached: ['DUST'] });
  });

  test('a new one starts with the rates of the workshop, and is whole once its amounts are typed', () => {
    expect(fresh).toMatchObject({ interestRate: '3.5', acquiredOn: '2026-03-01' });
    const typed = {
      ...fresh,
      code: 'SAW',
      name: 'Saw',
      bookCost: '1 200,50',
      replacementCost: '1500',
      hoursPerYear: '300',
    };
    expect(toolInputSchema.parse(toolInput(typed))).toMatchObject({
      bookCost: '1200.50',
      interestRate: '0.035',
    });
  });

  test('the price of hire goes with hired tools only, what it fetched with sold ones only', () => {
    const typed = { ...fresh, hirePerHour: '12', soldFor: '400' };
    expect(toolInput(typed)).toMatchObject({ hirePerHour: null, soldFor: null, soldOn: null });
    expect(toolInput({ ...typed, acquisition: 'hired' })).toMatchObject({ hirePerHour: '12' });
    expect(toolInput({ ...typed, soldOn: '2026-02-01' })).toMatchObject({
      soldFor: '400',
      soldOn: '2026-02-01',
    });
  });
});
