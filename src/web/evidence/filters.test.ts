// Which checks pass a choice, and that misses come first. Leaves out the page.
import { describe, expect, it } from 'vitest'
import type { EvidenceRow } from '../../evidence/evidence-row.ts'
import type { RowOutcome, Verdict } from '../../evidence/verdict.ts'
import { groupOf, missesFirst, NO_FILTERS, passes, resultOf, sourcesOf } from './filters.ts'

function outcome(id: string, verdict: Verdict, more: Partial<EvidenceRow> = {}): RowOutcome {
  const row: EvidenceRow = {
    id,
    kind: 'model',
    family: 'nasal-cannula',
    source: 'Yorozu2014',
    condition: 'invented',
    gas: 'one-condition',
    quantity: 'trachea',
    breathing: null,
    publishedValue: 0.4,
    unit: '1',
    compare: 'equal',
    tolerance: { value: 0.1, reason: 'published-sd' },
    known: 'seen',
    use: 'judge',
    isLimitingCase: false,
    reproduce: { by: 'patterns', engines: [], statistic: 'min' },
    ...more,
  }
  return { row, ourValue: 0.4, miss: 0, verdict }
}

const textOf = ({ row }: RowOutcome): string => `${row.id} ${row.condition}`
const fits = (one: RowOutcome, part: Partial<typeof NO_FILTERS>): boolean =>
  passes(one, { ...NO_FILTERS, ...part }, textOf)

describe('choice of checks', () => {
  it('lets everything through where nothing is chosen', () => {
    expect(fits(outcome('a', 'pass'), {})).toBe(true)
  })

  it('narrows by each choice alone', () => {
    const one = outcome('a', 'off')
    const chosen = {
      family: 'nasal-cannula',
      group: 'measured',
      source: 'Yorozu2014',
      quantity: 'trachea',
      result: 'miss',
      text: 'INVENTED a',
    }
    const others = {
      family: 'face-tent',
      group: 'formula',
      source: 'Parke2009',
      quantity: 'ratio',
      result: 'pass',
      text: 'invented b',
    }
    for (const [name, value] of Object.entries(chosen))
      expect(fits(one, { [name]: value }), name).toBe(true)
    for (const [name, value] of Object.entries(others))
      expect(fits(one, { [name]: value }), name).toBe(false)
  })

  it('counts a row once, by what it is used for', () => {
    const row = (more: Partial<EvidenceRow>): EvidenceRow => outcome('a', 'pass', more).row
    expect(groupOf(row({}))).toBe('measured')
    expect(groupOf(row({ kind: 'formula' }))).toBe('formula')
    expect(groupOf(row({ isLimitingCase: true }))).toBe('limiting')
    expect(groupOf(row({ use: 'calibrate' }))).toBe('calibrate')
    expect(groupOf(row({ use: 'trend' }))).toBe('trend')
    expect(groupOf(row({ use: 'context', kind: 'formula' }))).toBe('context')
  })

  it('calls off and far a miss, and leaves the unjudged unjudged', () => {
    expect(
      ['pass', 'off', 'far', 'none'].map((verdict) => resultOf(outcome('a', verdict as Verdict))),
    ).toEqual(['pass', 'miss', 'miss', 'none'])
  })

  it('puts misses first, the worst at the head, the others as they stand', () => {
    const rows = [
      outcome('passed', 'pass'),
      { ...outcome('slight', 'off'), miss: -0.15 },
      outcome('shown', 'none'),
      { ...outcome('grave', 'far'), miss: 0.5 },
    ]
    expect(missesFirst(rows).map(({ row }) => row.id)).toEqual([
      'grave',
      'slight',
      'passed',
      'shown',
    ])
  })

  it('lists each source once, in order', () => {
    const rows = [
      outcome('a', 'pass'),
      outcome('b', 'pass', { source: 'Parke2009' }),
      outcome('c', 'pass'),
    ]
    expect(sourcesOf([...rows, outcome('d', 'pass', { source: null })])).toEqual([
      'Parke2009',
      'Yorozu2014',
    ])
  })
})
