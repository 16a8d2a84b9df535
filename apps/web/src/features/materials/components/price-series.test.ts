import { describe, expect, it } from 'vitest';
import type { MaterialPrice } from '../api/list-material-prices.ts';
import { kindsOf, seriesOf } from './price-series.ts';

interface Given {
  readonly supplier: string;
  readonly on: string;
  readonly amount: string;
  readonly from?: string;
  readonly unit?: MaterialPrice['line']['unit'];
  readonly endedFrom?: string;
}

function price({ supplier, on, amount, from = '0', unit = 'board-foot', endedFrom }: Given): MaterialPrice {
  return {
    line: {
      id: `${supplier} ${on} ${from}`,
      itemId: `${supplier} ash`,
      code: 'ASH',
      description: '',
      material: 'ASH-4/4',
      unit,
      amount,
      breakFrom: from,
      breakKind: 'all-units',
      packSize: null,
      minimumQuantity: null,
      leadDays: null,
      rowNumber: 1,
    },
    list: {
      id: `${supplier} ${on}`,
      name: `List of ${on}`,
      validFrom: on,
      validTo: null,
      currency: 'EUR',
      taxIncluded: false,
    },
    supplier: { id: supplier, code: supplier, name: supplier },
    endedFrom: endedFrom ?? null,
  };
}

const PRICES = [
  price({ supplier: 'yard', on: '2026-03-01', amount: '6.4' }),
  price({ supplier: 'yard', on: '2026-03-01', amount: '5.9', from: '100' }),
  price({ supplier: 'yard', on: '2025-03-01', amount: '5' }),
  price({ supplier: 'mill', on: '2026-01-01', amount: '6.1' }),
  price({ supplier: 'gone', on: '2025-01-01', amount: '1', endedFrom: '2026-01-01' }),
];

describe('the price history', () => {
  it('draws units and currencies apart, and a line per supplier, article and break', () => {
    const kinds = kindsOf([
      ...PRICES,
      price({ supplier: 'mill', on: '2026-05-01', amount: '9', unit: 'each' }),
    ]);
    expect(kinds.map(({ key }) => key)).toEqual(['board-foot EUR', 'each EUR']);
    const series = seriesOf(PRICES, '2026-06-01');
    expect(series.map(({ label, points, until }) => [label, points.length, until])).toEqual([
      ['yard, ASH', 2, '2026-06-01'],
      ['yard, ASH from 100', 1, '2026-06-01'],
      ['mill, ASH', 1, '2026-06-01'],
      ['gone, ASH', 1, '2026-01-01'],
    ]);
  });
});
