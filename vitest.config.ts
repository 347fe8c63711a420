import { defineConfig } from 'vitest/config';
import LongestFirst from './tests/longest-first.ts';

export default defineConfig({
  test: {
    reporters: ['default', './tests/summary-reporter.ts'],
    // One for each core: the default leaves one idle, which is half of a small machine.
    maxWorkers: '100%',
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
