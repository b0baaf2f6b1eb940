// The two vitest projects: `unit` (no browser) and `browser` (Debian's chromium driven from Node). Leaves out types, lint and format, which scripts/test.mjs runs.
import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

// A hang must end some day, but no test is judged by its speed: two shared cores may be slow.
const HANG_LIMIT_MS = 300_000

const shared = {
  environment: 'node',
  testTimeout: HANG_LIMIT_MS,
  hookTimeout: HANG_LIMIT_MS,
  passWithNoTests: false,
  allowOnly: false,
} as const

export default defineConfig({
  test: {
    // Left alone, the runner keeps one core free and takes twice as long on two.
    maxWorkers: availableParallelism(),
    projects: [
      {
        test: {
          ...shared,
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'test/**/*.test.ts'],
          exclude: ['test/browser/**', 'test/fixtures/**', 'node_modules/**'],
          // Loading the core anew for every file took a fifth of the time. What a test sets (a language), it sets back.
          isolate: false,
        },
      },
      {
        test: {
          ...shared,
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          exclude: ['node_modules/**'],
          globalSetup: ['test/support/build-web.ts'],
        },
      },
    ],
  },
})
