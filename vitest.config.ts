import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    reporters: ['default', './test/closingLine.ts'],
    coverage: { provider: 'v8', include: ['src/**/*.{ts,tsx}'], reporter: ['text-summary', 'html'] },
    // Vitest itself would leave one core idle, which is half of a small machine.
    maxWorkers: availableParallelism(),
    projects: [
      {
        test: {
          name: 'unit',
          globalSetup: './test/built.ts',
          include: ['src/**/*.test.{ts,tsx}', 'test/**/*.test.ts', 'scripts/**/*.test.ts', 'bench/**/*.test.ts'],
          exclude: ['test/e2e/**'],
          testTimeout: 15_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'e2e',
          globalSetup: './test/built.ts',
          include: ['test/e2e/**/*.e2e.test.ts'],
          // Half of the time a browser is waited for; more than two would wait for each other.
          maxWorkers: 2,
          testTimeout: 120_000,
          hookTimeout: 60_000,
          expect: { poll: { timeout: 15_000 } },
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
