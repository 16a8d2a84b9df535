import { afterEach, expect, it, vi } from 'vitest';
import { localMoment } from './local-moment.ts';

afterEach(() => vi.unstubAllEnvs());

it.each([
  ['UTC', '2026-03-01 23:05'],
  ['Asia/Kolkata', '2026-03-02 04:35'],
  ['America/New_York', '2026-03-01 18:05'],
])('a moment is shown as the day and time in %s', (zone, shown) => {
  vi.stubEnv('TZ', zone);
  expect(localMoment('2026-03-01T23:05:00.000Z')).toBe(shown);
});
