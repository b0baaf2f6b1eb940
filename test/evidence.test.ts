// The outside checks as a whole: counts, solid tables, misses and their explanations, uses of rows. Leaves out each formula, which its own layer tests.
import { describe, expect, it } from 'vitest'
import { EVIDENCE_ROWS } from '../src/evidence/all-rows.ts'
import { breathingSensitivity } from '../src/evidence/breathing-sensitivity.ts'
import { leaveOneOut, refitParameters } from '../src/evidence/calibration.ts'
import { EXPLANATIONS } from '../src/evidence/explanations.ts'
import { measuredEngine } from '../src/evidence/measured-engine.ts'
import { nearestMeasurement } from '../src/evidence/nearest-measurement.ts'
import { citationOf, evidenceReport, isMiss } from '../src/evidence/report.ts'
import type { EvidenceRow } from '../src/evidence/evidence-row.ts'
import { judgeRow } from '../src/evidence/verdict.ts'
import { FAMILY_IDS } from '../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../src/kit/interface-families.ts'
import { medianOf } from '../src/units/spread.ts'

const report = evidenceReport()
const missedIds = report.misses.map(({ outcome }) => outcome.row.id)

function rowNamed(id: string): EvidenceRow {
  const row = EVIDENCE_ROWS.find((candidate) => candidate.id === id)
  if (row === undefined) throw new Error(`no row ${id}`)
  return row
}

describe('extent of the evidence', () => {
  it('holds at least 250 rows from at least 25 sources', () => {
    expect(report.counts.rows).toBeGreaterThanOrEqual(250)
    expect(report.counts.sources).toBeGreaterThanOrEqual(25)
  })

  it('runs the breath engine on at least 110 measured rows from at least 15 sources, limiting cases not counted', () => {
    expect(report.counts.judgedMeasured).toBeGreaterThanOrEqual(110)
    expect(report.counts.modelSources).toBeGreaterThanOrEqual(15)
  })

  it('names each row once', () => {
    expect(new Set(EVIDENCE_ROWS.map(({ id }) => id)).size).toBe(EVIDENCE_ROWS.length)
  })

  it('cites a source for everything but exact laws, arithmetic and common practice', () => {
    const uncited = EVIDENCE_ROWS.filter((row) => citationOf(row) === null)
    expect(
      uncited.filter(({ known }) => known === 'seen' || known === 'secondary').map(({ id }) => id),
    ).toEqual([])
  })

  it('never judges by a number that stands on memory alone where it is a measurement', () => {
    const judgedFromMemory = EVIDENCE_ROWS.filter(
      (row) => row.kind === 'model' && row.use === 'judge' && row.known === 'memory',
    )
    expect(judgedFromMemory.map(({ id }) => id)).toEqual([])
  })

  it('says for each engine run which breathing it assumes and whether the source states it', () => {
    const silent = EVIDENCE_ROWS.filter(
      (row) => row.kind === 'model' && row.reproduce.by !== 'formula' && row.breathing === null,
    )
    expect(silent).toEqual([])
  })
})

describe('assumed breathing', () => {
  it('moves a cannula row down with ventilation and says by how much', () => {
    const sensitivity = breathingSensitivity(rowNamed('pharynx-standard-rest-6'))
    const ours = judgeRow(rowNamed('pharynx-standard-rest-6')).ourValue
    expect(sensitivity?.atLowerVentilation).toBeGreaterThan(ours + 0.02)
    expect(sensitivity?.atHigherVentilation).toBeLessThan(ours - 0.02)
  })

  it('is nothing to vary where the source states the breathing', () => {
    expect(breathingSensitivity(rowNamed('handbook-cannula-500-0.2-6'))).toBeNull()
  })
})

describe('facts of the trade', () => {
  it('lets cannulas run from 0.125 L/min in children to 6 L/min in adults', () => {
    const sizes = INTERFACE_FAMILIES['nasal-cannula'].sizes
    expect(sizes.find(({ id }) => id === 'child')?.rated.minLpm).toBe(0.125)
    expect(sizes.find(({ id }) => id === 'adult')?.rated.maxLpm).toBe(6)
  })
})

describe('solid tables', () => {
  it('meets every published formula and table', () => {
    const failed = report.outcomes.filter(
      (outcome) => outcome.row.kind === 'formula' && outcome.verdict !== 'pass',
    )
    expect(failed.map(describeMiss)).toEqual([])
  })

  it.each([
    ['handbook cannula', 'handbook-cannula-', 54],
    ['low flow without a store', 'low-flow-engine-', 40],
    ['infant factors', 'infant-engine-', 45],
    ['all flow inhaled', 'infant-captured-', 10],
    ['entrainment dilution', 'valve-dilution-', 35],
    ['high-flow dilution', 'high-flow-dilution-', 63],
  ])('meets %s through the engine within 0.005', (_, prefix, count) => {
    const limiting = report.outcomes.filter(({ row }) => row.id.startsWith(prefix))
    expect(limiting.length).toBe(count)
    expect(
      limiting.filter((outcome) => Math.abs(outcome.miss) > 0.005 + 1e-9).map(describeMiss),
    ).toEqual([])
  })

  it('moves every published trend in the published direction', () => {
    const trends = report.outcomes.filter(({ row }) => row.use === 'trend')
    expect(trends.length).toBeGreaterThanOrEqual(40)
    expect(trends.filter(({ verdict }) => verdict !== 'pass').map(describeMiss)).toEqual([])
  })
})

describe('misses', () => {
  it('are at most 15 % of the judged engine runs, limiting cases counted or not', () => {
    expect(report.counts.missedShare).toBeLessThanOrEqual(0.15)
    expect(report.counts.missedMeasuredShare).toBeLessThanOrEqual(0.15)
  })

  it('each carry an explanation that a run confirms', () => {
    const unexplained = report.misses.filter(({ resultingVerdict }) => resultingVerdict !== 'pass')
    expect(unexplained.map(({ outcome }) => describeMiss(outcome))).toEqual([])
  })

  it('are the only rows with an explanation', () => {
    expect(EXPLANATIONS.map(({ rowId }) => rowId).toSorted()).toEqual(missedIds.toSorted())
  })

  it('start their explanation from the number in use', () => {
    const breaths = EXPLANATIONS.filter(({ parameter }) => parameter === 'tidal-volume-l')
    expect(breaths.length).toBeGreaterThan(0)
    for (const { rowId, from } of breaths)
      expect(rowNamed(rowId).breathing?.breath.tidalVolumeL, rowId).toBe(from)
  })

  it('start from the stored fit factor, exchange and flow', () => {
    const checked = EXPLANATIONS.flatMap(({ rowId, parameter, from }) => {
      const engine = measuredEngine(rowNamed(rowId))
      const behaviour = engine === null ? null : INTERFACE_FAMILIES[engine.family].behaviour
      if (engine === null || behaviour === null || !('exchange' in behaviour)) return []
      const { exchange } = behaviour
      const stored = new Map<string, number>([
        ['exchange-fit-factor', exchange.fitFactor[engine.fit ?? 'gentle']],
        ['exchange-base-lpm', medianOf(exchange.baseLpm.spread)],
        ['flow-lpm', engine.flowLpm],
      ]).get(parameter)
      return stored === undefined ? [] : [{ rowId, from, stored }]
    })
    expect(checked.length).toBeGreaterThanOrEqual(9)
    for (const { rowId, from, stored } of checked) expect(from, rowId).toBeCloseTo(stored, 6)
  })

  it('shows a planted wrong value as far off', () => {
    const row = rowNamed('simulator-tight-10')
    expect(judgeRow({ ...row, publishedValue: row.publishedValue + 0.2 }).verdict).toBe('far')
    expect(judgeRow({ ...row, publishedValue: row.publishedValue + 0.08 }).verdict).toBe('off')
    expect(isMiss(judgeRow(row))).toBe(false)
  })
})

describe('calibration', () => {
  const fits = refitParameters()

  it('uses only rows marked for it, and such rows carry no verdict', () => {
    const used = fits.flatMap(({ rowIds }) => rowIds)
    expect(used.map((id) => rowNamed(id).use).filter((use) => use !== 'calibrate')).toEqual([])
    const marked = EVIDENCE_ROWS.filter(({ use }) => use === 'calibrate').map(({ id }) => id)
    expect([...new Set(used)].toSorted()).toEqual(marked.toSorted())
    expect(
      report.outcomes.filter(({ row, verdict }) => row.use === 'calibrate' && verdict !== 'none'),
    ).toEqual([])
  })

  it('judges no condition that it also calibrates on', () => {
    const fingerprint = (row: EvidenceRow): string =>
      JSON.stringify([row.source, row.quantity, row.publishedValue, row.reproduce])
    const marked = EVIDENCE_ROWS.filter(({ use }) => use === 'calibrate').map(fingerprint)
    const judged = new Set(EVIDENCE_ROWS.filter(({ use }) => use === 'judge').map(fingerprint))
    expect(marked.filter((mark) => judged.has(mark))).toEqual([])
  })

  it('finds the stored parameters again', () => {
    expect(fits.filter(({ isKept }) => !isKept)).toEqual([])
  })

  it('predicts each tight-fit row of the simulator within 0.02 from the others', () => {
    const identified = leaveOneOut().filter(({ isIdentified }) => isIdentified)
    expect(identified.length).toBe(5)
    for (const { rowId, predicted, publishedValue } of identified)
      expect(Math.abs(predicted - publishedValue), rowId).toBeLessThan(0.02)
  })
})

describe('families', () => {
  it('are marked as checked exactly when a measurement judges them', () => {
    expect(report.families.map(({ family }) => family)).toEqual([...FAMILY_IDS])
    const wrong = report.families.filter(
      ({ hasMeasurement, isChecked }) => hasMeasurement !== isChecked,
    )
    expect(wrong).toEqual([])
  })

  it('miss by less than the rule of thumb wherever both speak of the same rows', () => {
    const compared = report.families.flatMap(({ family, rule }) =>
      rule === null ? [] : [{ family, rule }],
    )
    expect(compared.length).toBeGreaterThanOrEqual(4)
    for (const { family, rule } of compared) expect(rule.ours.rms, family).toBeLessThan(rule.rms)
  })

  it('have the nearest published measurement at hand', () => {
    expect(nearestMeasurement({ family: 'non-rebreather-mask', flowLpm: 10.4 })?.row.id).toBe(
      'simulator-tight-10',
    )
    expect(
      nearestMeasurement({ family: 'entrainment-mask', flowLpm: 9, setO2Fraction: 0.35 })?.flowLpm,
    ).toBe(8)
    expect(nearestMeasurement({ family: 'face-tent', flowLpm: 10 })).toBeNull()
  })
})

function describeMiss(outcome: (typeof report.outcomes)[number]): string {
  const { row, ourValue, verdict } = outcome
  return `${row.id} ${verdict}: published ${row.publishedValue}, ours ${ourValue}, tolerance ${row.tolerance.value}`
}
