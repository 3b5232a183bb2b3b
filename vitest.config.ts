import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'web/**/*.test.ts', 'demo/**/*.test.ts', 'test/**/*.test.ts'],
    exclude: ['test/long/**', 'node_modules/**'],
    environment: 'node',
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    reporters: ['default', './test/count-reporter.ts'],
  },
});
