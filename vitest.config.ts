import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    // Whole runs of the command share a small machine with the other tests.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/outside/**', 'node_modules/**'],
  },
})
