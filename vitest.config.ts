import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    // The tests change nothing that others see: loading the sources once serves them all.
    isolate: false,
    maxWorkers: 2,
    // Whole runs of the command share a small machine with the other tests.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/outside/**', 'node_modules/**'],
  },
})
