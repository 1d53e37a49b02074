import { defineConfig } from 'vitest/config'

// What needs Debian's tools (qpdf, poppler, Chromium). These tests fail where a tool is missing.
export default defineConfig({
  test: { include: ['tests/outside/**/*.test.ts'], testTimeout: 180_000, hookTimeout: 300_000 },
})
