// Counts what passed and failed over all runners, and reads vitest's JSON report. Leaves out printing of test details, which each runner does itself. Uses Node alone.
import { existsSync, readFileSync } from 'node:fs'

/** Adds up counts; every reason for a failure is kept so that the summary can name it. */
export class Tally {
  passed = 0
  failed = 0
  lines = []

  add({ name, passed, failed, remarks = [] }) {
    this.passed += passed
    this.failed += failed
    this.lines.push(
      `${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed`,
    )
    for (const remark of remarks) this.lines.push(`         ${remark}`)
  }

  /** The last line of every run. */
  get total() {
    return `${this.passed} passed, ${this.failed} failed`
  }
}

function testName(suite, test) {
  return `${suite.name} › ${test.fullName ?? test.title}`
}

/**
 * The true result of one vitest run from its report and exit code. A file that could not be imported, a skipped test,
 * a run without tests, a missing report and a crash each count as a failure.
 */
export function readVitestReport({ reportFile, exitCode }) {
  if (!existsSync(reportFile)) {
    return { passed: 0, failed: 1, remarks: [`no report: vitest ended with code ${exitCode}`] }
  }
  const report = JSON.parse(readFileSync(reportFile, 'utf8'))
  const result = { passed: 0, failed: 0, remarks: [] }
  const fail = (remark) => {
    result.failed += 1
    result.remarks.push(remark)
  }
  for (const suite of report.testResults) {
    for (const test of suite.assertionResults) {
      if (test.status === 'passed') result.passed += 1
      else if (test.status === 'failed') fail(`failed: ${testName(suite, test)}`)
      else fail(`not run (${test.status}): ${testName(suite, test)}`)
    }
    const broken = suite.assertionResults.every((test) => test.status !== 'failed')
    if (suite.status === 'failed' && broken) fail(`broken file: ${suite.name}: ${suite.message}`)
  }
  if (result.passed + result.failed === 0) fail('no test was run')
  if (exitCode !== 0 && result.failed === 0)
    fail(`vitest ended with code ${exitCode} (an error outside any test)`)
  return result
}
