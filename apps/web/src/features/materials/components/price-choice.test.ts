import { describe, expect, it } from 'vitest';
import type { MaterialPrice } from '../api/list-material-prices.ts';
import { costOfNeed, offersOf, usedOffer } from './price-choice.ts';
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
const need = (quantity: string) => ({ quantity, unit: 'board-foot', currency: 'EUR' }) as const;

describe('the price used today', () => {
  it('takes the cheapest in force for the quantity, breaks included', () => {
    const offers = offersOf(PRICES);
    expect(offers).toHaveLength(4);
    expect(usedOffer(offers, '2026-06-01', null, need('10'))?.offer.supplier).toBe('mill');
    expect(usedOffer(offers, '2026-06-01', null, need('100'))?.offer.supplier).toBe('yard');
    expect(usedOffer(offers, '2025-06-01', null, need('10'))?.offer.supplier).toBe('gone');
  });

  it('stays with the preferred supplier while it has a price in force', () => {
    const used = usedOffer(offersOf(PRICES), '2026-06-01', 'yard', need('10'));
    expect(used?.offer.listDate).toBe('2026-03-01');
    expect(used?.rule).toContain('preferred supplier');
  });

  it('compares prices of one unit only', () => {
    const offers = offersOf([price({ supplier: 'yard', on: '2026-03-01', amount: '1', unit: 'each' })]);
    expect(usedOffer(offers, '2026-06-01', null, need('10'))).toBeNull();
  });

  it('works out what the need costs at its break', () => {
    const [offer] = offersOf(PRICES);
    if (!offer) throw new Error('no offer');
    expect(costOfNeed(offer, need('10')).value.toFixed()).toBe('64');
    expect(costOfNeed(offer, need('100')).value.toFixed()).toBe('590');
  });
});

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
