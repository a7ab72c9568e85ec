import { defineConfig } from 'vitest/config';

/** `npm run look`: pictures of every feature in every theme, for eyes; nothing is judged here but that it comes up. */
export default defineConfig({
  test: {
    include: ['tests/editor/look/*.look.ts'],
    fileParallelism: false,
    maxWorkers: 1,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    teardownTimeout: 30_000,
  },
});
