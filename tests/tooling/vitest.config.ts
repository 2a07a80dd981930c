import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    // A slow machine is no fault of the program: what hangs is found all the same.
    testTimeout: 180_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    env: { TZ: 'UTC' },
    coverage: { include: ['src/**'], exclude: ['src/evidence/data/**'], reportsDirectory: 'coverage' },
  },
});
