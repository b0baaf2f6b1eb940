// Reads reference tables (test/reference/<key>/*.csv) and reports the worst miss of a comparison. Leaves out what each table means.
import { readFileSync } from 'node:fs'
import { expect } from 'vitest'

export type Row = Readonly<Record<string, string>>

/** Rows of test/reference/`path` by column name. Lines starting with # are remarks. Fails unless the header is the one expected. */
export function referenceRows(path: string, header: readonly string[]): readonly Row[] {
  const text = readFileSync(new URL(`../reference/${path}`, import.meta.url), 'utf8')
  const lines = text.split(/\r?\n/).filter((line) => line !== '' && !line.startsWith('#'))
  expect((lines[0] ?? '').split(',')).toEqual(header)
  return lines.slice(1).map((line) => {
    const cells = line.split(',')
    return Object.fromEntries(header.map((name, i) => [name, cells[i] ?? '']))
  })
}

/** The number in a column; an empty or unreadable cell fails. */
export function numberIn(row: Row, column: string): number {
  const text = row[column] ?? ''
  const value = text === '' ? Number.NaN : Number(text)
  expect(Number.isFinite(value), `${column} is a number in ${JSON.stringify(row)}`).toBe(true)
  return value
}

export interface Comparison {
  readonly label: string
  readonly ours: number
  readonly theirs: number
}

/** Largest absolute difference over all rows, with the row it stands in. NaN counts as infinitely wrong. */
export function worstMiss(rows: readonly Comparison[]): Comparison & { readonly miss: number } {
  expect(rows.length).toBeGreaterThan(0)
  return rows
    .map((row) => {
      const miss = Math.abs(row.ours - row.theirs)
      return { ...row, miss: Number.isNaN(miss) ? Number.POSITIVE_INFINITY : miss }
    })
    .reduce((worst, row) => (row.miss > worst.miss ? row : worst))
}

/** Same, relative to the published value. */
export function worstRelativeMiss(
  rows: readonly Comparison[],
): Comparison & { readonly miss: number } {
  return worstMiss(
    rows.map((row) => ({
      ...row,
      ours: row.theirs === 0 ? row.ours : row.ours / row.theirs,
      theirs: row.theirs === 0 ? 0 : 1,
    })),
  )
}

/** Fails when the worst miss exceeds the tolerance; the message names the row. */
export function expectWithin(rows: readonly Comparison[], tolerance: number): void {
  const worst = worstMiss(rows)
  expect(worst.miss, JSON.stringify(worst)).toBeLessThanOrEqual(tolerance)
}

export function expectWithinRelative(rows: readonly Comparison[], tolerance: number): void {
  const worst = worstRelativeMiss(rows)
  expect(worst.miss, JSON.stringify(worst)).toBeLessThanOrEqual(tolerance)
}
