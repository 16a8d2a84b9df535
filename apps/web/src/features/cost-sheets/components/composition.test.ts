import { exampleSheetInput, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import { describe, expect, it } from 'vitest';
import { COST_ROWS, PRICE_ROWS, piecesWords } from './class-rows.ts';
import { COMPOSITION_SERIES, composition } from './composition.ts';

const worked = toWorkedCostSheet(costSheet({ ...exampleSheetInput, quantities: [1, 3] }), {
  withDerivations: true,
});
const amountOf = (id: string) => decimal(worked.figures[id]?.value ?? 'no figure');

describe('what a price is made of', () => {
  it('adds up to the net price of a piece, but for the rounding of its six parts', () => {
    const bars = composition(worked);
    expect(bars.map(({ label }) => label)).toEqual(['1 piece', '3 pieces']);
    for (const [at, column] of worked.columns.entries()) {
      const parts = COMPOSITION_SERIES.map(({ id }) => decimal(bars[at]?.values[id] ?? 'no part'));
      const whole = parts.reduce((sum, part) => sum.plus(part), decimal('0'));
      const net = amountOf(column.price.netPrice).div(column.quantity);
      expect(whole.minus(net).abs().toNumber()).toBeLessThanOrEqual(0.03);
    }
  });
});

describe('the lines of a cost sheet', () => {
  it('shows each class and each figure of the price once, all of them figures of the answer', () => {
    for (const column of worked.columns) {
      const shown = [...COST_ROWS, ...PRICE_ROWS].map((row) => row.figure(column));
      const given = [column.classes, column.price, column.perPiece, column.hours].flatMap((part) =>
        Object.values(part),
      );
      expect(shown.toSorted()).toEqual(given.toSorted());
      for (const id of shown) if (id !== null) expect(worked.figures).toHaveProperty([id]);
    }
  });

  it('adds up from class to class as read from top to bottom', () => {
    for (const column of worked.columns) {
      let running = decimal('0');
      for (const row of COST_ROWS) {
        const id = row.figure(column);
        if (id === null || row.id === 'listPrice') continue;
        if (row.isTotal) expect(running.toFixed(), row.label).toBe(amountOf(id).toFixed());
        else running = running.plus(amountOf(id));
      }
    }
  });

  it('counts pieces in words', () => {
    expect(piecesWords(1)).toBe('1 piece');
    expect(piecesWords(12)).toBe('12 pieces');
  });
});
