import type { FigureTable } from '@scantling/figures';
import { expect, it } from 'vitest';
import { mergeTables } from './merge-tables.ts';

it('keeps figures of the same name apart, each with its own inputs', () => {
  const table = (value: string): FigureTable => ({
    total: {
      id: 'total',
      label: 'total',
      unit: 'money',
      currency: 'EUR',
      value,
      how: { operation: 'sum', inputs: ['leaf'] },
    },
    leaf: { id: 'leaf', label: 'leaf', unit: 'money', currency: 'EUR', value },
  });
  const merged = mergeTables({ sent: table('1'), now: table('2'), nothing: undefined });
  expect(Object.keys(merged)).toEqual(['sent:total', 'sent:leaf', 'now:total', 'now:leaf']);
  expect(merged['now:total']).toMatchObject({ id: 'now:total', value: '2', how: { inputs: ['now:leaf'] } });
});
