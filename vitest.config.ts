import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import LongestFirst from './tests/longest-first.ts';

export default defineConfig({
  test: {
    reporters: ['default', './tests/summary-reporter.ts'],
    // More than cores: browser tests wait for half of their time, and the default even leaves one core idle.
    maxWorkers: Math.ceil(1.5 * availableParallelism()),
    sequence: { sequencer: LongestFirst },
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
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
