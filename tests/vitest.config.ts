import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/support/build.ts'],
    testTimeout: 30_000,
    // Most of the wire tests wait more than they work.
    maxWorkers: 2,
  },
});
