import { recalculate, toTable } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { CostingInputError } from '../input-error.ts';
import { costSheet } from './cost-sheet.ts';
import { sampleBill, sampleSheet } from './sample-sheet.ts';

const [make] = sampleBill.operations;
if (make === undefined) throw new Error('the sample has an operation');
const sheetOf = (times: { runHoursLow?: string; runHoursHigh?: string }) =>
  costSheet({ ...sampleSheet, bill: { ...sampleBill, operations: [{ ...make, ...times }] } });

describe('an operation estimated at three points', () => {
  it('costs the mean (low + 4 likely + high) / 6, once', () => {
    // Likely 2 h between 1.5 and 4: (1.5 + 8 + 4) / 6 = 2.25 h, and 1 h of setup.
    const [one, five] = sheetOf({ runHoursLow: '1.5', runHoursHigh: '4' }).columns;
    expect(one?.work[0]?.hours.value.toString()).toBe('3.25');
    expect(five?.work[0]?.hours.value.toString()).toBe('12.25');
    const hours = one?.work[0]?.hours;
    if (!hours) throw new Error('an operation has hours');
    const { ids, figures } = toTable({ hours }, { withDerivations: true });
    expect(recalculate(figures, { 'bill/operation make/run-high': '7' }).get(ids.hours)?.toString()).toBe(
      '3.75',
    );
  });

  it('needs both ends, in order, and names the field', () => {
    const fieldOf = (times: Parameters<typeof sheetOf>[0]) => {
      try {
        sheetOf(times);
      } catch (error) {
        if (error instanceof CostingInputError) return error.field;
      }
      return null;
    };
    expect(fieldOf({ runHoursLow: '1' })).toBe('bill.operations.0.runHoursHigh');
    expect(fieldOf({ runHoursLow: '3', runHoursHigh: '4' })).toBe('bill.operations.0.runHoursLow');
    expect(fieldOf({})).toBeNull();
  });
});
