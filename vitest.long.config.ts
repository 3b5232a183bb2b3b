import { defineConfig } from 'vitest/config';

/** The long run: everything too long for every day. `npm run test:long`, resumable. */
export default defineConfig({
  test: {
    include: ['test/long/**/*.test.ts'],
    environment: 'node',
    maxWorkers: 1,
    reporters: ['verbose', './test/count-reporter.ts'],
  },
});
