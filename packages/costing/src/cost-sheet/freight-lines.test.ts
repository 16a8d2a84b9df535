import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SupplierTerms } from '../price-list/index.ts';
import { type CostColumn, costSheet } from './cost-sheet.ts';
import type { CostSheetInput } from './cost-sheet-input.ts';
import { sampleSheet } from './sample-sheet.ts';

const YARD: SupplierTerms = {
  code: 'yard',
  name: 'Invented Yard',
  currency: 'USD',
  freightPerOrder: '20',
  tax: { isIncluded: false, rate: '0', recoverableShare: '1' },
};

function first(changes: Partial<CostSheetInput>): CostColumn {
  const [column] = costSheet({ ...sampleSheet, suppliers: [YARD], ...changes }).columns;
  if (!column) throw new Error('a column was asked for');
  return column;
}

const places = (value: { toDecimalPlaces(n: number): { toString(): string } } | undefined) =>
  value?.toDecimalPlaces(4).toString();

describe('freight of an order', () => {
  it('is charged whole on the commission basis, in the class of the goods it brings', () => {
    const without = first({ basis: 'commission', suppliers: [] });
    const { freightIn, classes } = first({ basis: 'commission' });
    expect(freightIn.map((line) => [line.class, places(line.charged.value)])).toEqual([
      ['direct-materials', '20'],
    ]);
    expect(places(classes.directMaterials.value.minus(without.classes.directMaterials.value))).toBe('20');
    expect(classes.freight.value.eq(without.classes.freight.value)).toBe(true);
  });

  it('is shared by use on the shop basis: 38 of 41 of goods used, so 38/41 of 20', () => {
    // 36.00 of oak used whole, 2.00 of a pack of screws of 5.00.
    const [line] = first({}).freightIn;
    expect([places(line?.charged.value), places(line?.boughtCost.value)]).toEqual(['18.5366', '20']);
    // Leftover screws are worth nothing to the shop, so nothing of their freight goes to stock.
    expect(places(line?.loss.value)).toBe('1.4634');
  });

  it('comes once a batch, not once a piece', () => {
    const { columns } = costSheet({ ...sampleSheet, basis: 'commission', suppliers: [YARD] });
    expect(columns.map((column) => places(column.freightIn[0]?.boughtCost.value))).toEqual(['20', '20']);
  });

  it('keeps charged + stock + loss = bought on either basis, with tax and another currency', () => {
    const terms = fc.record({
      freight: fc.integer({ min: 0, max: 90_000 }).map((cents) => (cents / 100).toFixed(2)),
      basis: fc.constantFrom('shop', 'commission'),
      isIncluded: fc.boolean(),
      recovered: fc.constantFrom('0', '0.5', '1'),
      leftoverShare: fc.constantFrom('0', '0.3', '1'),
      pieces: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(terms, ({ freight, basis, isIncluded, recovered, leftoverShare, pieces }) => {
        const supplier: SupplierTerms = {
          ...YARD,
          currency: 'EUR',
          freightPerOrder: freight,
          tax: { isIncluded, rate: '0.2', recoverableShare: recovered },
          exchange: { to: 'USD', rate: '1.1', onDate: '2026-01-01', source: 'invented' },
        };
        const materials = sampleSheet.materials.map((one) => ({ ...one, offcutValueShare: leftoverShare }));
        const { freightIn } = first({ basis, materials, suppliers: [supplier], quantities: [pieces] });
        for (const line of freightIn) {
          const paid = line.charged.value.plus(line.offcutValue.value).plus(line.loss.value);
          expect(paid.minus(line.boughtCost.value).abs().lt('1e-20')).toBe(true);
          expect(line.boughtCost.currency).toBe('USD');
        }
        expect(freightIn).toHaveLength(Number(freight) === 0 ? 0 : 1);
      }),
    );
  });

  it('is not charged where nothing is bought of the supplier', () => {
    expect(first({ suppliers: [{ ...YARD, code: 'another' }] }).freightIn).toEqual([]);
  });
});
