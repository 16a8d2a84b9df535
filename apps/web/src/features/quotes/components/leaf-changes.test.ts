import { expect, it } from 'vitest';
import { type LeafChange, movedLeaves } from './leaf-changes.ts';

const node = (key: string, value: string) => ({
  id: key,
  label: key,
  unit: 'money' as const,
  currency: 'EUR' as const,
  value,
});
const change = (key: string, old: string, now: string): LeafChange => ({
  kind: 'changed',
  key,
  label: key,
  old: node(key, old),
  now: node(key, now),
});

it('puts the largest move first and a leaf of several lines once', () => {
  const line = { description: 'x', costSheetId: 'x', costThen: 'x', costNow: null, problem: null };
  const lines = [
    { ...line, id: 'a', changes: [change('glue', '10', '10.1'), change('oak', '4', '6')] },
    { ...line, id: 'b', changes: [change('oak', '4', '6'), change('owner', '50', '40')] },
  ];
  expect(movedLeaves({ lines }).map(({ key }) => key)).toEqual(['oak', 'owner', 'glue']);
});
