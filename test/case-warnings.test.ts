// Everything a case is allowed to say but must be seen: one case for each warning code.
import { describe, expect, it } from 'vitest'
import { readCase } from '../src/patient/read-case.ts'
import { WARNING_CODES, type WarningCode } from '../src/patient/warnings.ts'
import { EXAMPLE_FILES, parsedExample, parsedFile } from './support/examples.ts'

interface Allowed {
  readonly code: WarningCode
  readonly path: string
  readonly from: string
  readonly part: string
  readonly fields: Readonly<Record<string, unknown>>
}

const ALLOWED: readonly Allowed[] = [
  { code: 'SITE_NOT_GIVEN', path: 'site', from: 'nasal-cannula', part: '', fields: { site: {} } },
  { code: 'NO_READING', path: 'onNow', from: 'no-reading', part: '', fields: {} },
  { code: 'NO_READING', path: 'onNow.saturationPercent', from: 'comfort', part: '', fields: {} },
  {
    code: 'WEIGHT_UNUSUAL_FOR_AGE',
    path: 'patient.weightKg',
    from: 'nasal-cannula',
    part: 'patient',
    fields: { weightKg: 230 },
  },
  {
    code: 'WEIGHT_UNUSUAL_FOR_AGE',
    path: 'patient.weightKg',
    from: 'child-asthma',
    part: 'patient',
    fields: { weightKg: 60 },
  },
  {
    code: 'HEIGHT_UNUSUAL_FOR_AGE',
    path: 'patient.heightCm',
    from: 'nasal-cannula',
    part: 'patient',
    fields: { heightCm: 110 },
  },
  {
    code: 'OXIMETER_NOT_TO_BE_TRUSTED',
    path: 'goal.reason',
    from: 'carbon-monoxide',
    part: '',
    fields: {},
  },
  {
    code: 'OXIMETER_NOT_TO_BE_TRUSTED',
    path: 'patient.bloodGas.carboxyhaemoglobinFraction',
    from: 'carbon-monoxide',
    part: '',
    fields: {},
  },
  {
    code: 'SET_UP_DOES_NOT_REACH_LUNGS',
    path: 'onNow.setUp.family',
    from: 'simple-mask',
    part: 'patient',
    fields: { airway: { route: 'laryngectomy' } },
  },
  {
    code: 'SET_UP_DOES_NOT_REACH_LUNGS',
    path: 'onNow.setUp.family',
    from: 'tracheostomy-speaking-valve',
    part: 'patient',
    fields: {
      airway: { route: 'tracheostomy', nose: 'open', tube: { cuff: 'down', capped: true } },
    },
  },
  {
    code: 'SET_UP_DOES_NOT_REACH_LUNGS',
    path: 'onNow.setUp.family',
    from: 'nasal-cannula',
    part: 'patient',
    fields: { airway: { route: 'natural', nose: 'blocked' } },
  },
  {
    code: 'SIZE_UNUSUAL_FOR_AGE',
    path: 'onNow.setUp.size',
    from: 'child-asthma',
    part: 'patient',
    fields: { ageYears: 40, weightKg: 70, heightCm: 170 },
  },
  {
    code: 'READING_MAY_NOT_HAVE_SETTLED',
    path: 'onNow.sinceMinutes',
    from: 'nasal-cannula',
    part: 'onNow',
    fields: { sinceMinutes: 2 },
  },
  {
    code: 'READING_DISAGREES_WITH_BLOOD_GAS',
    path: 'onNow.saturationPercent',
    from: 'nasal-cannula',
    part: 'patient',
    fields: { bloodGas: { arterialPco2Kpa: 5, arterialPo2Kpa: 5, minutesAgo: 3 } },
  },
  {
    code: 'VALUE_PLAYS_NO_PART',
    path: 'breathing.mouthShare',
    from: 'tracheostomy-mask',
    part: 'breathing',
    fields: { mouthShare: 0.3 },
  },
]

function changed({ from, part, fields }: Allowed): unknown {
  const root = parsedExample(from) as Record<string, object> // Safe: examples are objects of objects.
  return part === '' ? { ...root, ...fields } : { ...root, [part]: { ...root[part], ...fields } }
}

describe('the case reader warns', () => {
  it.each(ALLOWED)('$code at $path', (allowed) => {
    const read = readCase(changed(allowed))
    expect(read.ok ? [] : read.problems).toEqual([])
    expect(read.warnings.map(({ code, path }) => `${code} ${path}`)).toContain(
      `${allowed.code} ${allowed.path}`,
    )
  })

  it('with every code it has', () => {
    expect([...new Set(ALLOWED.map(({ code }) => code))].toSorted()).toEqual(
      [...WARNING_CODES].toSorted(),
    )
  })

  it('of nothing in an ordinary case', () => {
    expect(readCase(parsedExample('nasal-cannula')).warnings).toEqual([])
    const warned = EXAMPLE_FILES.filter((file) => readCase(parsedFile(file)).warnings.length > 0)
    expect(warned).toEqual(['carbon-monoxide.json', 'comfort.json', 'no-reading.json'])
  })
})
