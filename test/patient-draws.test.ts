// Laws of drawn patients, on the examples and on random cases: every draw is a body that can breathe, the same numbers give the same body, typed values narrow.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkBreath } from '../src/delivery/breath.ts'
import type { DeliveryBody } from '../src/delivery/delivery-body.ts'
import { assumePatient } from '../src/patient/assume.ts'
import type { Case } from '../src/patient/case.ts'
import {
  LEAST_BREATH_PER_DEAD_SPACE,
  upperAirwayIsDeadSpace,
} from '../src/patient/dead-space-in-use.ts'
import { BODY_DIMENSIONS } from '../src/patient/draw-body.ts'
import { GAS_DIMENSIONS } from '../src/patient/draw-gas.ts'
import {
  drawPatient,
  middlePatient,
  PATIENT_DIMENSIONS,
  type PatientDraw,
} from '../src/patient/draw.ts'
import { assumedValues, VALUE_KEYS, VALUE_UNITS } from '../src/patient/patient-spread.ts'
import { readCase } from '../src/patient/read-case.ts'
import { arterialFromInspired } from '../src/physiology/shunt-shift.ts'
import { limitsOf, medianOf, quantile } from '../src/units/spread.ts'
import { EXAMPLE_FILES, parsedExample, parsedFile } from './support/examples.ts'
import { randomCase } from './support/random-case.ts'
import { randomStream, seeded } from './support/seed.ts'

function exampleCase(file: string): Case {
  const read = readCase(parsedFile(file))
  if (!read.ok) throw new Error(file)
  return read.case
}

function namedCase(
  name: string,
  edit: (root: Record<string, Record<string, unknown>>) => void = () => {},
): Case {
  const root = structuredClone(parsedExample(name)) as Record<string, Record<string, unknown>> // Safe: examples are objects of objects.
  edit(root)
  const read = readCase(root)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.case
}

function drawsOf(about: Case, count: number): PatientDraw[] {
  const next = randomStream(7)
  return Array.from({ length: count }, () => {
    const numbers = Array.from({ length: PATIENT_DIMENSIONS }, () => Math.max(1e-9, next()))
    return drawPatient(about, (i) => numbers[i] ?? 0)
  })
}

/** Everything a draw must be, whatever the case. */
function expectLivingBody(draw: PatientDraw): void {
  for (const [path, value] of numbersOf(draw)) expect(Number.isFinite(value), path).toBe(true)
  // A drawn body is a body of the delivery engine, and its breath within the engine's limits.
  const body: DeliveryBody = draw
  checkBreath(body.breath)
  const spaceL = upperAirwayIsDeadSpace(draw.airway)
    ? draw.intrathoracicL + draw.extrathoracicL
    : draw.intrathoracicL
  expect(draw.breath.tidalVolumeL).toBeGreaterThanOrEqual(
    LEAST_BREATH_PER_DEAD_SPACE * spaceL * (1 - 1e-9),
  )
  for (const share of [draw.mouthShare, draw.tubeShare, draw.gas.shuntFraction]) {
    expect(share).toBeGreaterThanOrEqual(0)
    expect(share).toBeLessThanOrEqual(1)
  }
  const arterial = arterialFromInspired(draw.lung, {
    inspiredO2Fraction: 1,
    barometricKpa: draw.barometricPressureKpa,
    arterialPco2Kpa: draw.gas.arterialPco2Kpa,
  })
  expect(arterial.arterialSaturation).toBeGreaterThanOrEqual(0)
  expect(arterial.arterialSaturation).toBeLessThanOrEqual(1)
}

function numbersOf(value: unknown, path = ''): (readonly [string, number])[] {
  if (typeof value === 'number') return [[path, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersOf(inner, `${path}.${key}`))
}

describe('drawn patients', () => {
  it('name each dimension once', () => {
    for (const names of [BODY_DIMENSIONS, GAS_DIMENSIONS])
      expect(new Set(names).size).toBe(names.length)
    expect(PATIENT_DIMENSIONS).toBe(BODY_DIMENSIONS.length + GAS_DIMENSIONS.length)
  })

  it.each(EXAMPLE_FILES)('of %s can all breathe', (file) => {
    const about = exampleCase(file)
    expectLivingBody(middlePatient(about))
    drawsOf(about, 200).forEach(expectLivingBody)
  })

  it('of random cases can all breathe, at the ends of every distribution too', () => {
    const end = fc.constantFrom(1e-12, 1 - 1e-12)
    const number = fc.oneof(fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true }), end)
    const numbers = fc.array(number, {
      minLength: PATIENT_DIMENSIONS,
      maxLength: PATIENT_DIMENSIONS,
    })
    fc.assert(
      fc.property(randomCase, numbers, (about, drawn) => {
        expectLivingBody(drawPatient(about, (i) => drawn[i] ?? 0))
      }),
      seeded(1000),
    )
  })

  it('are the same for the same numbers', () => {
    const about = exampleCase('entrainment-mask.json')
    expect(drawsOf(about, 20)).toEqual(drawsOf(about, 20))
  })

  it('share the numbers of what does not change between two cases', () => {
    const slow = namedCase('nasal-cannula', (root) => {
      root['breathing'] = { state: 'pneumonia', ratePerMin: 18 }
      root['onNow'] = { setUp: null }
    })
    const fast = namedCase('nasal-cannula', (root) => {
      root['breathing'] = { state: 'pneumonia', ratePerMin: 34 }
      root['onNow'] = { setUp: null }
    })
    const pairs = drawsOf(slow, 50).map((draw, i) => [draw, drawsOf(fast, 50)[i]] as const)
    for (const [a, b] of pairs) {
      expect(b?.gas).toEqual(a.gas)
      expect(b?.breath.dutyFraction).toBe(a.breath.dutyFraction)
      expect(b?.breath.ratePerMin).toBeGreaterThan(a.breath.ratePerMin)
      expect(b?.breath.tidalVolumeL).toBeLessThan(a.breath.tidalVolumeL)
    }
  })

  it('hardly ever need the nearest value in place of a cut distribution', () => {
    for (const file of EXAMPLE_FILES) {
      const draws = drawsOf(exampleCase(file), 100)
      const volumes = new Set(draws.map((draw) => draw.breath.tidalVolumeL))
      const spaces = new Set(draws.map((draw) => draw.intrathoracicL))
      expect(volumes.size, file).toBeGreaterThan(95)
      expect(spaces.size, file).toBeGreaterThan(95)
    }
  })
})

describe('assumed values', () => {
  it.each(EXAMPLE_FILES)(
    'of %s are whole: every value has a spread, a unit and how it is known',
    (file) => {
      const { values, fit } = assumePatient(exampleCase(file))
      for (const key of VALUE_KEYS) {
        const { spread, known } = values[key]
        expect(quantile(spread, 0.1), key).toBeLessThanOrEqual(quantile(spread, 0.9))
        expect(known, key).toMatch(/^(seen|secondary|memory|derived|common-practice)$/)
      }
      expect(Object.values(fit.shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
    },
  )

  it('of random cases are whole', () => {
    fc.assert(
      fc.property(randomCase, (about) => {
        for (const { low, median, high } of assumedValues(assumePatient(about))) {
          expect(low).toBeLessThanOrEqual(median)
          expect(median).toBeLessThanOrEqual(high)
        }
      }),
      seeded(300),
    )
  })

  it('name what was not typed, never what was', () => {
    const about = namedCase('entrainment-mask')
    const keys = assumedValues(assumePatient(about)).map(({ key }) => key)
    for (const key of [
      'weightKg',
      'heightCm',
      'ratePerMin',
      'haemoglobinGpl',
      'arterialPco2Kpa',
      'ph',
    ])
      expect(keys).not.toContain(key)
    for (const key of [
      'tidalVolumeMl',
      'dutyFraction',
      'mouthShare',
      'shuntFraction',
      'barometricPressureKpa',
    ])
      expect(keys).toContain(key)
  })

  it('leave out what plays no part in this airway', () => {
    const keys = assumedValues(assumePatient(namedCase('tracheostomy-mask'))).map(({ key }) => key)
    for (const key of ['mouthShare', 'extrathoracicMl', 'tubeShare'])
      expect(keys).not.toContain(key)
    const capped = assumedValues(assumePatient(namedCase('tracheostomy-capped'))).map(
      ({ key }) => key,
    )
    for (const key of ['mouthShare', 'extrathoracicMl']) expect(capped).toContain(key)
  })

  it('say sea level loudly when no place was given', () => {
    const about = namedCase('nasal-cannula', (root) => {
      root['site'] = {}
    })
    const value = assumedValues(assumePatient(about)).find(
      ({ key }) => key === 'barometricPressureKpa',
    )
    expect(value).toMatchObject({
      code: 'SEA_LEVEL_ASSUMED',
      low: 101.325,
      median: 101.325,
      high: 101.325,
    })
  })

  it('come from the altitude, with the weather, when that was given', () => {
    const spread = assumePatient(namedCase('nasal-cannula')).values.barometricPressureKpa
    expect(spread.code).toBe('PRESSURE_FROM_ALTITUDE')
    // 1180 m lies between the tabled 84.6 (1500 m) and 89.9 kPa (1000 m), standard atmosphere.
    expect(medianOf(spread.spread)).toBeGreaterThan(87)
    expect(medianOf(spread.spread)).toBeLessThan(89)
  })

  it('take whoever needs oxygen for ill, not for healthy', () => {
    const { shuntFraction } = assumePatient(
      namedCase('on-air', (root) => {
        root['breathing'] = { state: 'rest' }
      }),
    ).values
    expect(shuntFraction.code).toBe('LUNG_CONDITION_NOT_KNOWN')
    expect(quantile(shuntFraction.spread, 0.95)).toBeGreaterThan(0.15)
  })

  it('carry more carbon dioxide the greater the risk, and a gas before any of it', () => {
    const middle = (retentionRisk: string) =>
      medianOf(
        assumePatient(
          namedCase('nasal-cannula', (root) => {
            root['patient'] = { ...root['patient'], retentionRisk }
          }),
        ).values.arterialPco2Kpa.spread,
      )
    expect(middle('none')).toBeLessThan(middle('at-risk'))
    expect(middle('at-risk')).toBeLessThan(middle('known-retainer'))
    const gas = assumePatient(namedCase('entrainment-mask')).values.arterialPco2Kpa
    expect(gas.origin).toBe('typed')
    expect(medianOf(gas.spread)).toBeCloseTo(7.4, 6)
  })

  it.each([
    ['ratePerMin', 'breathing', 24],
    ['tidalVolumeMl', 'breathing', 420],
    ['dutyFraction', 'breathing', 0.4],
    ['haemoglobinGpl', 'patient', 100],
    ['temperatureC', 'patient', 38],
    ['oxygenUptakeMlPerMin', 'patient', 260],
  ] as const)('become narrow around a typed %s', (key, part, value) => {
    const free = assumePatient(
      namedCase('on-air', (root) => {
        root['breathing'] = { state: 'pneumonia' }
        root['onNow'] = { setUp: null }
      }),
    ).values[key]
    const bound = assumePatient(
      namedCase('on-air', (root) => {
        root['breathing'] = { state: 'pneumonia' }
        root['onNow'] = { setUp: null }
        root[part] = { ...root[part], [key]: value }
      }),
    ).values[key]
    const width = (spread: typeof free.spread) => quantile(spread, 0.9) - quantile(spread, 0.1)
    expect(bound.origin).toBe('typed')
    expect(medianOf(bound.spread)).toBeCloseTo(value, 6)
    expect(width(bound.spread)).toBeLessThan(width(free.spread))
    expect(limitsOf(bound.spread).min).toBeGreaterThan(0)
    expect(VALUE_UNITS[key]).not.toBe('')
  })

  it('give a child born early a length that goes with its weight, whatever its age', () => {
    const length = (age: object, weightKg: number, gestationWeeks: number) =>
      assumePatient(
        namedCase('preterm', (root) => {
          const { airway, retentionRisk } = root['patient'] ?? {}
          root['patient'] = { ...age, airway, retentionRisk, weightKg, gestationWeeks, sex: 'male' }
          root['breathing'] = { state: 'rest' }
          root['onNow'] = { setUp: null }
        }),
      ).body.heightCm
    // 1.1 kg: about 36 to 38 cm at birth on every preterm chart; 10 kg at 18 months: 82 cm is the WHO median.
    expect(length({ ageDays: 24 }, 1.1, 28)).toBeGreaterThan(33)
    expect(length({ ageDays: 24 }, 1.1, 28)).toBeLessThan(39)
    expect(length({ ageMonths: 18 }, 10, 28)).toBeGreaterThan(77)
    expect(length({ ageMonths: 18 }, 10, 28)).toBeLessThan(87)
  })

  it('shift the fit to loose behind a beard, and stand still once it was seen', () => {
    const loose = (changes: readonly string[]) =>
      assumePatient(
        namedCase('on-air', (root) => {
          root['patient'] = { ...root['patient'], changes }
        }),
      ).fit.shares.loose
    expect(loose(['beard'])).toBeGreaterThan(loose([]))
    expect(assumePatient(namedCase('non-rebreather-mask')).fit).toMatchObject({
      origin: 'typed',
      shares: { loose: 1 },
    })
  })
})
