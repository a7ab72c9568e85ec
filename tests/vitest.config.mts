import { defineConfig } from 'vitest/config';

/** Every suite except the real editor's, which has a configuration of its own. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/editor/**', '**/node_modules/**'],
    setupFiles: ['packages/language/object-group-by.mjs', 'tests/property-seed.ts'],
    allowOnly: false,
    // Left to itself the runner keeps one core free, which on a machine of two doubles the time.
    maxWorkers: '100%',
    // No test measures time: whoever waits, waits long enough for a machine that is busy with something else.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 60_000 } },
  },
});
