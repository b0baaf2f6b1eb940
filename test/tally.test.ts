// The totals of `npm test` are true: what did not run, or crashed, is never counted as passed.
import { describe, expect, it } from 'vitest'
import { Tally, readVitestReport } from '../scripts/lib/tally.mjs'
import { withPlanted } from './support/planted.ts'

interface PlantedSuite {
  readonly name: string
  readonly status: 'passed' | 'failed'
  readonly message?: string
  readonly assertionResults: readonly { readonly title: string; readonly status: string }[]
}

function readPlanted(options: {
  readonly suites: readonly PlantedSuite[]
  readonly exitCode: number
}): {
  readonly passed: number
  readonly failed: number
} {
  const report = JSON.stringify({ testResults: options.suites })
  return withPlanted({ 'report.json': report }, (root) =>
    readVitestReport({ reportFile: `${root}/report.json`, exitCode: options.exitCode }),
  )
}

const GREEN: PlantedSuite = {
  name: 'a.test.ts',
  status: 'passed',
  assertionResults: [
    { title: 'one', status: 'passed' },
    { title: 'two', status: 'passed' },
  ],
}

describe('totals of npm test', () => {
  it('count what passed', () => {
    expect(readPlanted({ suites: [GREEN], exitCode: 0 })).toEqual({
      passed: 2,
      failed: 0,
      remarks: [],
    })
  })

  it.each([
    {
      name: 'a failed test',
      suites: [
        { ...GREEN, status: 'failed', assertionResults: [{ title: 'one', status: 'failed' }] },
      ],
      exitCode: 1,
    },
    {
      name: 'a skipped test',
      suites: [{ ...GREEN, assertionResults: [{ title: 'one', status: 'pending' }] }],
      exitCode: 0,
    },
    {
      name: 'a test yet to be written',
      suites: [{ ...GREEN, assertionResults: [{ title: 'one', status: 'todo' }] }],
      exitCode: 0,
    },
    {
      name: 'a file that could not be imported',
      suites: [{ ...GREEN, status: 'failed', message: 'no such file', assertionResults: [] }],
      exitCode: 1,
    },
    { name: 'a run without tests', suites: [], exitCode: 0 },
    { name: 'a crash outside any test', suites: [GREEN], exitCode: 1 },
  ] satisfies readonly { name: string; suites: readonly PlantedSuite[]; exitCode: number }[])(
    'count $name as one failure',
    ({ suites, exitCode }) => {
      expect(readPlanted({ suites, exitCode }).failed).toBe(1)
    },
  )

  it('count a missing report as a failure', () => {
    expect(readVitestReport({ reportFile: '/nowhere/report.json', exitCode: 137 }).failed).toBe(1)
  })

  it('add up over all runners into one last line', () => {
    const tally = new Tally()
    tally.add({ name: 'types', passed: 1, failed: 0 })
    tally.add({ name: 'tests', passed: 41, failed: 2, remarks: ['failed: x'] })
    expect(tally.total).toBe('42 passed, 2 failed')
    expect(tally.lines.join('\n')).toContain('failed: x')
  })
})
