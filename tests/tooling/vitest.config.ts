import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    env: { TZ: 'UTC' },
    coverage: { include: ['src/**'], exclude: ['src/evidence/data/**'], reportsDirectory: 'coverage' },
  },
});
