import { defineConfig } from 'vitest/config';

/** The tests in a real editor: one after the other, in one process, patient, and never tried twice. */
export default defineConfig({
  test: {
    include: ['tests/editor/**/*.test.ts'],
    allowOnly: false,
    fileParallelism: false,
    maxWorkers: 1,
    sequence: { concurrent: false },
    retry: 0,
    bail: 0,
    testTimeout: 240_000,
    expect: { poll: { timeout: 60_000 } },
    hookTimeout: 300_000,
    teardownTimeout: 30_000,
  },
});
