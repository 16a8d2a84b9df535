import { describe, expect, it } from 'vitest';
import { quoteTotals } from './quote-totals.ts';
import { sampleTotals as given, sampleLine as line, SAMPLE_TAXES as TAXES } from './sample-totals.ts';
import type { QuoteTotalsInput } from './totals-input.ts';

describe('a quote that cannot be worked out', () => {
  const option = { kind: 'option' } as const;
  const standard = { kind: 'alternate', group: 'wood', isStandard: true } as const;
  const other = { kind: 'alternate', group: 'wood', isStandard: false } as const;
  const part = (id: string, share: string) => ({ id, label: id, share });
  it.each<[string, Partial<QuoteTotalsInput>]>([
    ['lines.1.id', { lines: [line('a', '1'), line('a', '2')] }],
    ['lines.0.price', { lines: [line('a', 'dear')] }],
    ['lines.0.quantity', { lines: [line('a', '1', { quantity: '' })] }],
    ['lines.0.priceBase', { lines: [line('a', '1', { priceBase: '0' })] }],
    ['lines.0.tax', { lines: [line('a', '1', { tax: 'other' })] }],
    ['lines.0.choice.group', { lines: [line('a', '1', { choice: other })] }],
    [
      'lines.1.choice.isStandard',
      { lines: [line('a', '1', { choice: standard }), line('b', '1', { choice: standard })] },
    ],
    ['chosen.0', { lines: [line('a', '1')], chosen: ['a'] }],
    ['chosen.1', { lines: [line('a', '1', { choice: option })], chosen: ['a', 'b'] }],
    [
      'chosen.1',
      {
        lines: [line('a', '1', { choice: standard }), line('b', '1', { choice: other })],
        chosen: ['b', 'a'],
      },
    ],
    ['taxes.0.rate', { taxes: [{ id: 'x', category: 'S', rate: '19', name: 'x', exemptionReason: '' }] }],
    ['taxes.1.id', { taxes: [TAXES[0], TAXES[0]] }],
    ['discount.share', { lines: [line('a', '1')], discount: { kind: 'share', share: '1.1' } }],
    ['discount.amount', { lines: [line('a', '1')], discount: { kind: 'amount', amount: '2' } }],
    [
      'discount',
      {
        lines: [line('a', '10'), line('b', '-1', { tax: 'low' })],
        discount: { kind: 'amount', amount: '2' },
      },
    ],
    ['schedule', { schedule: [part('a', '0.4'), part('b', '0.5')] }],
    ['schedule.0.share', { schedule: [part('a', '-0.4')] }],
    ['schedule.1.id', { schedule: [part('a', '0.4'), part('a', '0.6')] }],
  ])('names %s and the mend', (field, more) => {
    let found: unknown;
    try {
      quoteTotals(given(more));
    } catch (error) {
      found = error;
    }
    expect(found).toMatchObject({ code: 'quoting-input', field });
    expect(Reflect.get(Object(found), 'mend')).toMatch(/\w{3}/);
  });
});
