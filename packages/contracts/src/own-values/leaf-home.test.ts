import { describe, expect, it } from 'vitest';
import { isShopWide, leafHome } from './leaf-home.ts';

describe('where a leaf is kept', () => {
  it.each([
    ['bill/part a/b/length', { kind: 'design', list: 'parts', row: 'a/b', path: ['length'] }],
    [
      'bill/part leg/band-thickness',
      { kind: 'design', list: 'parts', row: 'leg', path: ['edgeBand', 'thickness'] },
    ],
    [
      'bill/finish oil/transfer-efficiency',
      { kind: 'design', list: 'finishes', row: 'oil', path: ['transferEfficiency'] },
    ],
    [
      'bill/operation cut/learning/rate',
      { kind: 'design', list: 'operations', row: 'cut', path: ['learningRate'] },
    ],
    ['bill/operation cut/run', { kind: 'design', list: 'operations', row: 'cut', path: ['runHours'] }],
    ['parameter/length', { kind: 'design-parameter', id: 'length' }],
    ['terms/policy/per-hour', { kind: 'terms', path: ['policy', 'perHour'] }],
    ['terms/price-step', { kind: 'terms', path: ['priceStep', 'to'] }],
    ['terms/quoting-hours', { kind: 'terms', path: ['quotingHours'] }],
    ['labour/owner/pay-per-hour', { kind: 'labour-grade', code: 'owner', path: ['payPerHour'] }],
    ['machine/saw/cutter/2/life-hours', { kind: 'tool', code: 'saw', path: ['cutters', '1', 'lifeHours'] }],
    ['machine/saw/floor-area-m2', { kind: 'tool', code: 'saw', path: ['floorAreaM2'] }],
    ['shop/floor-cost-per-m2', { kind: 'workshop', path: ['floorCostPerM2'] }],
    [
      'allowance/rough-lumber/length',
      { kind: 'workshop', path: ['forms', 'rough-lumber', 'lengthAllowance'] },
    ],
    ['material/ASH-4/4/yield', { kind: 'material', code: 'ASH-4/4', path: ['yieldFactor'] }],
    ['supplier/yard/freight', { kind: 'supplier', code: 'yard', path: ['freightPerOrder'] }],
    [
      'price/yard/A/44/board-foot/2.5',
      { kind: 'price', supplier: 'yard', code: 'A/44', unit: 'board-foot', from: '2.5' },
    ],
    ['exchange-rate/EUR/2026-01-02', { kind: 'exchange-rate', from: 'EUR' }],
    ['overhead/workshop/amount/0193/yearly-amount', { kind: 'overhead-amount', id: '0193' }],
    [
      'overhead/administration/planned-base',
      { kind: 'workshop', path: ['administrationOverhead', 'plannedBase'] },
    ],
  ] as const)('%s', (key, home) => {
    expect(leafHome(key)).toEqual(home);
  });

  it.each([
    'written/40 mm',
    'price/yard/A44/board-foot/sold-in',
    'price/yard/A44/board-foot/from-100',
    'overhead/workshop/recovered-by-rates',
    'overhead/administration/amount/lost-enquiries/yearly-amount',
    'resaw/leg/kerf',
  ])('%s is nowhere that it could be changed alone, and says what to do', (key) => {
    expect(leafHome(key)).toMatchObject({ kind: 'nowhere', mend: expect.stringMatching(/this sheet only/) });
  });

  it('is shared by other designs or not', () => {
    expect(
      ['material/A/yield', 'labour/owner/burden', 'price/y/A/litre/0'].map((key) =>
        isShopWide(leafHome(key)),
      ),
    ).toEqual([true, true, true]);
    expect(['bill/part a/length', 'terms/freight'].map((key) => isShopWide(leafHome(key)))).toEqual([
      false,
      false,
    ]);
  });
});
