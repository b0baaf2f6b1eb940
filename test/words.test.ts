// Every code of the core has its text: remarks found by scanning the sources, reasons for a goal, field labels. Leaves out whether the texts are wise.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { ERROR_CODES } from '../src/errors.ts'
import { KEYS } from '../src/patient/case-fields.ts'
import { WARNING_CODES } from '../src/patient/warnings.ts'
import { GOAL_REASONS } from '../src/planning/goal-reasons.ts'
import { EXCLUSION_RULES } from '../src/planning/exclusions.ts'
import { ASSUMPTION_TEXTS } from '../src/words/assumed-text.ts'
import { fieldLabel } from '../src/words/field-labels.ts'
import { GOAL_REASON_NAMES } from '../src/words/goal-text.ts'
import { EXCLUSION_NAMES } from '../src/words/remark-exclusions.ts'
import { REMARK_TEXTS } from '../src/words/remark-text.ts'
import { filesUnder, isTestFile, ROOT } from './support/files.ts'

/** Folders whose code words are remarks, unless another table of texts holds them. */
const FOLDERS = ['src/kit', 'src/humidity', 'src/patient', 'src/inference', 'src/planning']
const CODE = /'([A-Z][A-Z0-9]*(?:_[A-Z0-9]+)*)'/g
const SHORTEST_CODE = 4
/** Keys of sources end with a year or a number of four digits. */
const SOURCE_KEY = /\d{4}$/

/** Code words that are no remarks. */
const ELSEWHERE = new Set<string>([
  ...Object.keys(ERROR_CODES),
  ...WARNING_CODES,
  ...Object.keys(ASSUMPTION_TEXTS),
])

function codesIn(text: string): readonly string[] {
  const code = text.replaceAll(/^\s*(?:\/\/|\/?\*).*$/gm, '')
  return [...code.matchAll(CODE)]
    .map(([, word = '']) => word)
    .filter((word) => word.length >= SHORTEST_CODE && !SOURCE_KEY.test(word))
}

function remarkCodes(): readonly string[] {
  const files = FOLDERS.flatMap((folder) => filesUnder({ root: ROOT, folder, endings: ['.ts'] }))
  const codes = files
    .filter((path) => !isTestFile(path))
    .flatMap((path) => codesIn(readFileSync(join(ROOT, path), 'utf8')))
  return [...new Set(codes)].filter((code) => !ELSEWHERE.has(code)).toSorted()
}

describe('words', () => {
  it('hold a text for every remark the core makes', () => {
    const codes = remarkCodes()
    expect(codes.length).toBeGreaterThan(50)
    expect(codes.filter((code) => REMARK_TEXTS[code] === undefined)).toEqual([])
  })

  it('hold no text that nothing says', () => {
    const codes = new Set([...remarkCodes(), ...WARNING_CODES])
    expect(Object.keys(REMARK_TEXTS).filter((code) => !codes.has(code))).toEqual([])
  })

  it('find a code that has no text', () => {
    expect(codesIn(`const line = remark('BRAND_NEW_CODE')`)).toEqual(['BRAND_NEW_CODE'])
    expect(codesIn(`// says 'BRAND_NEW_CODE'`)).toEqual([])
  })

  it('name every reason for a goal, with its caution', () => {
    expect(Object.keys(GOAL_REASON_NAMES).toSorted()).toEqual(
      GOAL_REASONS.map(({ id }) => id).toSorted(),
    )
    for (const { caution } of GOAL_REASONS) expect(REMARK_TEXTS).toHaveProperty(caution)
  })

  it('name every exclusion shortly, for counting', () => {
    const codes = EXCLUSION_RULES.map(({ code }) => code)
    expect(codes.filter((code) => EXCLUSION_NAMES[code] === undefined)).toEqual([])
  })

  it('label every field of a case', () => {
    const paths = [
      ...KEYS.case,
      ...KEYS.patient.map((key) => `patient.${key}`),
      ...KEYS.tube.map((key) => `patient.airway.tube.${key}`),
      ...KEYS.bloodGas.map((key) => `patient.bloodGas.${key}`),
      ...KEYS.breathing.map((key) => `breathing.${key}`),
      ...KEYS.site.map((key) => `site.${key}`),
      ...KEYS.saturationGoal.map((key) => `goal.${key}`),
      ...KEYS.fractionGoal.map((key) => `goal.${key}`),
      ...KEYS.onNow.map((key) => `onNow.${key}`),
      ...KEYS.setUp.map((key) => `onNow.setUp.${key}`),
      ...KEYS.over.map((key) => `onNow.setUp.over.${key}`),
    ]
    expect(paths.filter((path) => path.includes('.') && fieldLabel(path) === path)).toEqual([])
  })

  it('keep British spelling and name no colour', () => {
    const american = /\b(?:[a-z]+iz(?:e|ed|ing|ation)|[Cc]olor\w*|[Ll]iters?|[Hh]emoglobin|fiber)\b/
    const allowed = /\b(?:sized?|seized?)\b/g
    const files = filesUnder({ root: ROOT, folder: 'src/words', endings: ['.ts'] })
    const faults = files
      .filter((path) => !isTestFile(path))
      .filter((path) =>
        american.test(readFileSync(join(ROOT, path), 'utf8').replaceAll(allowed, '')),
      )
    expect(faults).toEqual([])
  })
})
