import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          // Reading every source file takes longer than the usual five seconds on a busy machine.
          testTimeout: 30_000,
          include: [
            'packages/**/*.test.ts',
            'apps/web/**/*.test.{ts,tsx}',
            'tests/published/*.test.ts',
            'tests/architecture/*.test.ts',
          ],
          environment: 'node',
        },
      },
      {
        test: {
          name: 'api',
          include: ['apps/api/**/*.test.ts', 'tests/api/*.test.ts'],
          environment: 'node',
          testTimeout: 30_000,
          hookTimeout: 120_000,
          globalSetup: ['tests/api/global-setup.ts'],
        },
      },
      {
        // The built product and the scripts, as processes of their own: needs `npm run build`.
        test: {
          name: 'start',
          include: ['tests/start/*.test.ts'],
          environment: 'node',
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/*.test.ts'],
          environment: 'node',
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
