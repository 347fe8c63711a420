import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    reporters: ['default', './tests/summary-reporter.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', 'tests/proof/**'],
          environment: 'node',
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: { name: 'proof', include: ['tests/proof/**/*.test.ts'], environment: 'node', testTimeout: 60_000 },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/browser/serve-the-build.ts'],
          // Each has a browser of its own besides: more of them would only wait for each other.
          maxWorkers: 2,
          testTimeout: 60_000,
          hookTimeout: 120_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
