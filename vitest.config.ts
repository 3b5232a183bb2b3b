import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['src/**/*.test.ts', 'web/**/*.test.ts', 'test/**/*.test.ts'], environment: 'node', maxWorkers: 2 },
});
