// Reads where the patient is: altitude, barometric pressure, or neither. Leaves out weather, which is part of the spread.
import {
  barometricPressureKpa as pressureAtKpa,
  requireBarometricKpa,
} from '../physics/atmosphere.ts'
import { isDomainError, problemOf } from '../errors.ts'
import { metresFromFeet } from '../units/length.ts'
import { FIELD_ALIASES } from './aliases.ts'
import type { Site } from './case.ts'
import { KEYS, NUMBERS } from './case-fields.ts'
import { given, isGiven, openObject, pathOf, readNumber, report, type Node } from './field.ts'
import { roundForSuggestion, suggestedBySlip } from './unit-slip.ts'

/** Weather moves the barometer by about 3 kPa, and the two model atmospheres differ by 2 (common practice). */
export const WEATHER_TOLERANCE_KPA = 5

export function readSite(root: Node): Site {
  if (!isGiven(root, 'site')) return warnNoSite(root)
  const node = openObject({
    reading: root.reading,
    path: pathOf(root, 'site'),
    value: root.fields.get('site'),
    keys: KEYS.site,
    aliases: FIELD_ALIASES,
  })
  if (node === undefined) return {}
  const altitudeM = readNumber(node, 'altitudeM', NUMBERS.altitudeM)
  const barometricPressureKpa = readPressure(node)
  if (!isGiven(node, 'altitudeM') && !isGiven(node, 'barometricPressureKpa'))
    return warnNoSite(root)
  const site = given({ altitudeM, barometricPressureKpa })
  reportDisagreement(node, site)
  return site
}

function warnNoSite(root: Node): Site {
  root.reading.warnings.push({ code: 'SITE_NOT_GIVEN', path: pathOf(root, 'site'), value: null })
  return {}
}

/** As any number, but a pressure above the highest weather at the lowest dry land is a chamber and has its own code. */
function readPressure(node: Node): number | undefined {
  const key = 'barometricPressureKpa'
  const rule = NUMBERS.barometricPressureKpa
  const value = node.fields.get(key)
  const isChamber = typeof value === 'number' && Number.isFinite(value) && value > rule.max
  if (!isChamber || suggestedBySlip(value, rule) !== undefined) return readNumber(node, key, rule)
  try {
    return requireBarometricKpa(value, pathOf(node, key))
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return report(node.reading, problemOf(thrown))
  }
}

function reportDisagreement(node: Node, site: Site): void {
  const { altitudeM, barometricPressureKpa } = site
  if (altitudeM === undefined || barometricPressureKpa === undefined) return
  const expectedKpa = pressureAtKpa(altitudeM)
  if (Math.abs(expectedKpa - barometricPressureKpa) <= WEATHER_TOLERANCE_KPA) return
  report(node.reading, {
    code: 'ALTITUDE_AND_PRESSURE_DISAGREE',
    path: pathOf(node, 'barometricPressureKpa'),
    value: barometricPressureKpa,
    limit: {
      min: roundForSuggestion(expectedKpa - WEATHER_TOLERANCE_KPA),
      max: roundForSuggestion(expectedKpa + WEATHER_TOLERANCE_KPA),
    },
    unit: 'kPa',
  })
  suggestFeet(node, { altitudeM, barometricPressureKpa })
}

function suggestFeet(
  node: Node,
  site: { readonly altitudeM: number; readonly barometricPressureKpa: number },
): void {
  const metres = metresFromFeet(site.altitudeM)
  if (Math.abs(pressureAtKpa(metres) - site.barometricPressureKpa) > WEATHER_TOLERANCE_KPA) return
  report(node.reading, {
    code: 'UNIT_SLIP_SUSPECTED',
    path: pathOf(node, 'altitudeM'),
    value: site.altitudeM,
    limit: { min: NUMBERS.altitudeM.min, max: NUMBERS.altitudeM.max },
    unit: 'm',
    suggestion: roundForSuggestion(metres),
  })
}
