import { expect, it } from 'vitest';
import { newestChanged } from './newest-changed.ts';

it('gives the rows changed last, the newest first, and leaves the list as it was', () => {
  const rows = [
    { id: 'old', updatedAt: '2026-01-05T10:00:00.000Z' },
    { id: 'new', updatedAt: '2026-03-01T09:00:00.000Z' },
    { id: 'mid', updatedAt: '2026-03-01T08:59:59.999Z' },
  ];
  expect(newestChanged(rows, 2).map(({ id }) => id)).toEqual(['new', 'mid']);
  expect(rows.map(({ id }) => id)).toEqual(['old', 'new', 'mid']);
});
