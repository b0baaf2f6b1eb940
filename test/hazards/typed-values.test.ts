// Hazards of typing: a wrong unit, a decimal comma, a number out of range, a contradiction, a patient this is not for. Nothing is converted, clamped or dropped.
import { describe, expect, it } from 'vitest'
import type { Problem } from '../../src/errors.ts'
import { BREATHING_STATES } from '../../src/patient/case.ts'
import { readCase } from '../../src/patient/read-case.ts'
import { parsedExample } from '../support/examples.ts'

type Fields = Readonly<Record<string, unknown>>

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** An example with one value changed: `path` as in `patient.weightKg`. */
function changed(example: string, path: string, value: unknown): unknown {
  const set = (node: unknown, [key = '', ...rest]: readonly string[]): unknown => {
    const fields = isFields(node) ? node : {}
    return { ...fields, [key]: rest.length === 0 ? value : set(fields[key], rest) }
  }
  return set(parsedExample(example), path.split('.'))
}

function problems(input: unknown): readonly Problem[] {
  const read = readCase(input)
  return read.ok ? [] : read.problems
}

function problemAt(example: string, path: string, value: unknown): Problem {
  const found = problems(changed(example, path, value))
  const at = found.find((problem) => problem.path === path)
  if (at === undefined) throw new Error(`nothing said at ${path}: ${JSON.stringify(found)}`)
  return at
}

describe('a value typed in another unit', () => {
  it('is refused with the value it may have meant, and not converted', () => {
    const rows = [
      { from: 'simple-mask', path: 'patient.haemoglobinGpl', typed: 12, meant: 120 },
      { from: 'newborn', path: 'patient.weightKg', typed: 3500, meant: 3.5 },
      { from: 'simple-mask', path: 'patient.temperatureC', typed: 101, meant: 38.3 },
      { from: 'measured-pressure', path: 'site.barometricPressureKpa', typed: 760, meant: 101 },
    ]
    for (const { from, path, typed, meant } of rows) {
      const problem = problemAt(from, path, typed)
      expect(problem.code).toBe('UNIT_SLIP_SUSPECTED')
      expect(problem.value).toBe(typed)
      expect(Math.abs(Number(problem.suggestion) / meant - 1)).toBeLessThan(0.01)
    }
  })

  it('is noticed for a per cent setting typed where a fraction belongs', () => {
    const problem = problemAt('entrainment-mask', 'onNow.setUp.setO2Fraction', 28)
    expect(problem).toMatchObject({ code: 'UNIT_SLIP_SUSPECTED', value: 28, suggestion: 0.28 })
  })

  it('is noticed for millilitres per minute typed as litres on an infant', () => {
    const problem = problemAt('preterm', 'onNow.setUp.flowLpm', 25)
    expect(problem).toMatchObject({ code: 'UNIT_SLIP_SUSPECTED', value: 25, suggestion: 0.025 })
  })
})

describe('a number as text', () => {
  it('with a decimal comma is refused with the number it may have meant, not read as fifteen', () => {
    const problem = problemAt('simple-mask', 'onNow.setUp.flowLpm', '1,5')
    expect(problem).toMatchObject({ code: 'NOT_A_NUMBER', value: '1,5', suggestion: 1.5 })
  })

  it('with group signs or an exponent is refused without a guess', () => {
    for (const typed of ['1.000,5', '1e1', '0x10']) {
      const problem = problemAt('simple-mask', 'onNow.setUp.flowLpm', typed)
      expect(problem.code).toBe('NOT_A_NUMBER')
      expect(problem.suggestion).toBeUndefined()
    }
  })

  it('that is no number at all never gets in', () => {
    for (const typed of [Number.NaN, Number.POSITIVE_INFINITY, null, [], {}])
      expect(problemAt('simple-mask', 'breathing.ratePerMin', typed).code).toBe('NOT_A_NUMBER')
  })
})

describe('a number out of range', () => {
  it('is refused with its own value and the limits, never clamped', () => {
    const rows = [
      { path: 'goal.highPercent', typed: 140 },
      { path: 'breathing.ratePerMin', typed: 400 },
      { path: 'onNow.saturationPercent', typed: 101 },
      { path: 'onNow.setUp.flowLpm', typed: 900 },
    ]
    for (const { path, typed } of rows) {
      const problem = problemAt('simple-mask', path, typed)
      expect(problem.value).toBe(typed)
      expect(problem.limit).toBeDefined()
    }
  })

  it('above the pressure of any place is refused as a hyperbaric chamber or out of range', () => {
    const problem = problemAt('measured-pressure', 'site.barometricPressureKpa', 240)
    expect(['HYPERBARIC_REFUSED', 'BAROMETRIC_PRESSURE_OUT_OF_RANGE']).toContain(problem.code)
    expect(problem.value).toBe(240)
  })
})

describe('a contradiction', () => {
  it('of speaking valve and cuff up is refused', () => {
    const tube = {
      cuff: 'up',
      speakingValve: true,
      capped: false,
      heatMoistureExchanger: false,
    }
    expect(
      problems(changed('tracheostomy-speaking-valve', 'patient.airway.tube', tube)).map(
        ({ code }) => code,
      ),
    ).toContain('SPEAKING_VALVE_WITH_CUFF_UP')
  })

  it('of speaking valve and heat and moisture exchanger is refused', () => {
    const tube = {
      cuff: 'down',
      speakingValve: true,
      capped: false,
      heatMoistureExchanger: true,
    }
    expect(
      problems(changed('tracheostomy-speaking-valve', 'patient.airway.tube', tube)).map(
        ({ code }) => code,
      ),
    ).toContain('SPEAKING_VALVE_WITH_EXCHANGER')
  })

  it('of altitude and barometric pressure is refused', () => {
    expect(
      problems(
        changed('simple-mask', 'site', { altitudeM: 1180, barometricPressureKpa: 101.3 }),
      ).map(({ code }) => code),
    ).toContain('ALTITUDE_AND_PRESSURE_DISAGREE')
  })

  it('of a reversed goal is refused', () => {
    const goal = { kind: 'saturation', lowPercent: 98, highPercent: 94 }
    expect(problems(changed('simple-mask', 'goal', goal)).map(({ code }) => code)).toContain(
      'RANGE_REVERSED',
    )
  })
})

describe('a patient this is not for', () => {
  it('who does not breathe is refused', () => {
    for (const state of ['apnoea', 'gasping', 'not breathing', 'cardiac arrest'])
      expect(problemAt('simple-mask', 'breathing.state', state).code).toBe('NOT_BREATHING_REFUSED')
  })

  it('who is ventilated is refused', () => {
    for (const state of ['ventilated', 'CPAP', 'intubated'])
      expect(problemAt('simple-mask', 'breathing.state', state).code).toBe('VENTILATED_REFUSED')
    expect(BREATHING_STATES.join(' ')).not.toMatch(/\bventilated|cpap|apnoea/)
  })

  it('born before term without a weight is refused until it is given', () => {
    const problem = problemAt('preterm', 'patient.weightKg', undefined)
    expect(problem.code).toBe('WEIGHT_REQUIRED')
  })
})

describe('a set-up that gets no number', () => {
  it('of blow-by oxygen is no choice', () => {
    const problem = problemAt('child-asthma', 'onNow.setUp.family', 'blow-by')
    expect(problem.code).toBe('UNKNOWN_CHOICE')
  })

  it('with a pulse-dose setting is refused by its own code, whatever it is called', () => {
    for (const name of ['pulseSetting', 'pulse_dose', 'conserver']) {
      const found = problems(changed('nasal-cannula', `onNow.setUp.${name}`, 3))
      expect(found.map(({ code }) => code)).toContain('PULSE_SETTING_REFUSED')
    }
    const kind = problemAt('nasal-cannula', 'onNow.setUp.sourceKind', 'pulse-dose')
    expect(kind.code).toBe('PULSE_SETTING_REFUSED')
  })

  it('at flush on a source without flush is refused', () => {
    const setUp = { family: 'simple-mask', sourceKind: 'concentrator', flowLpm: 'flush' }
    expect(
      problems(changed('simple-mask', 'onNow.setUp', setUp)).map(({ code }) => code),
    ).toContain('FLUSH_NOT_ON_SOURCE')
  })
})

describe('a reading', () => {
  it('that is not there is warned of', () => {
    const read = readCase(parsedExample('no-reading'))
    expect(read.warnings.map(({ code }) => code)).toContain('NO_READING')
  })

  it('taken before it can have settled is warned of', () => {
    const read = readCase(changed('simple-mask', 'onNow.sinceMinutes', 1))
    expect(read.warnings.map(({ code }) => code)).toContain('READING_MAY_NOT_HAVE_SETTLED')
  })

  it('under carbon monoxide is warned of', () => {
    const read = readCase(parsedExample('carbon-monoxide'))
    expect(read.warnings.map(({ code }) => code)).toContain('OXIMETER_NOT_TO_BE_TRUSTED')
  })

  it('on an interface that does not lead to the lungs is warned of', () => {
    const read = readCase(
      changed('simple-mask', 'patient.airway', {
        route: 'laryngectomy',
        heatMoistureExchanger: false,
      }),
    )
    expect(read.warnings.map(({ code }) => code)).toContain('SET_UP_DOES_NOT_REACH_LUNGS')
  })

  it('at a place whose pressure is not known is warned of', () => {
    const read = readCase(changed('nasal-cannula', 'site', {}))
    expect(read.warnings.map(({ code }) => code)).toContain('SITE_NOT_GIVEN')
  })
})
