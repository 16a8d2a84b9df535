import { expect, it } from 'vitest';
import type { ExactStock } from '../instance/exact-instance.ts';
import { fewerKinds } from './fewer-kinds.ts';

it('tries each kind of stock alone, and all but one', () => {
  const stock = (id: string): ExactStock => ({
    ...{ id, length: 1, width: 1, cost: 1, available: 5, trim: 0 },
    usable: { length: 1, width: 1 },
  });
  const tried = fewerKinds(['a', 'b', 'c'].map(stock)).map((list) =>
    list.flatMap(({ id, available }) => (available > 0 ? [id] : [])).join(''),
  );
  expect(tried).toEqual(['a', 'b', 'c', 'bc', 'ac', 'ab']);
});
