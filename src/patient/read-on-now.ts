// Reads what is on now and what it reads. Leaves out what the reading says about the patient, which inference works out.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { neckInUse, upperAirwayInUse, type AirwayState } from '../physiology/airway-state.ts'
import { FIELD_ALIASES } from './aliases.ts'
import { KEYS, NUMBERS } from './case-fields.ts'
import type { OnNow, Patient, SetUpOnNow } from './case.ts'
import {
  given,
  isGiven,
  openObject,
  pathOf,
  readNumber,
  reportMissing,
  type Node,
} from './field.ts'
import { readRate } from './read-breathing.ts'
import { readSetUp, reportFlowForSize } from './read-set-up.ts'

/** Minutes to watch after any change before judging it. Source: ODriscoll2017. */
const SETTLING_MINUTES = 5

export function readOnNow(root: Node, patient: Patient | undefined): OnNow | undefined {
  if (!isGiven(root, 'onNow')) {
    root.reading.warnings.push({ code: 'NO_READING', path: pathOf(root, 'onNow'), value: null })
    return undefined
  }
  const node = openObject({
    reading: root.reading,
    path: pathOf(root, 'onNow'),
    value: root.fields.get('onNow'),
    keys: KEYS.onNow,
    aliases: FIELD_ALIASES,
  })
  if (node === undefined) return undefined
  const setUp = readSetUpOrAir(node, patient)
  const sinceMinutes = readNumber(node, 'sinceMinutes', NUMBERS.sinceMinutes)
  const saturationPercent = readNumber(node, 'saturationPercent', NUMBERS.saturationPercent)
  const ratePerMin = readRate(node)
  warnReading(node, { sinceMinutes, saturationPercent })
  if (setUp === undefined) return undefined
  return { setUp, ...given({ sinceMinutes, saturationPercent, ratePerMin }) }
}

/** null means room air; an absent set-up is not taken for air. */
function readSetUpOrAir(node: Node, patient: Patient | undefined): SetUpOnNow | null | undefined {
  if (!isGiven(node, 'setUp')) return reportMissing(node, 'setUp')
  const value = node.fields.get('setUp')
  if (value === null) return null
  const inner = openObject({
    reading: node.reading,
    path: pathOf(node, 'setUp'),
    value,
    keys: KEYS.setUp,
    aliases: FIELD_ALIASES,
  })
  const setUp = inner === undefined ? undefined : readSetUp(inner)
  if (inner !== undefined && setUp !== undefined && patient !== undefined) {
    reportFlowForSize(inner, setUp, patient)
    warnSetUp(inner, setUp, patient)
  }
  return setUp
}

function warnSetUp(node: Node, setUp: SetUpOnNow, patient: Patient): void {
  const { warnings } = node.reading
  const { opening, sizes } = INTERFACE_FAMILIES[setUp.family]
  if (!reachesLungs(opening, patient.airway)) {
    const path = pathOf(node, 'family')
    warnings.push({ code: 'SET_UP_DOES_NOT_REACH_LUNGS', path, value: setUp.family })
  }
  const size = sizes.find(({ id }) => id === setUp.size)
  if (size === undefined) return
  if (patient.ageYears >= size.ageYearsMin && patient.ageYears <= size.ageYearsMax) return
  warnings.push({
    code: 'SIZE_UNUSUAL_FOR_AGE',
    path: pathOf(node, 'size'),
    value: size.id,
    limit: { min: size.ageYearsMin, max: size.ageYearsMax },
    unit: 'a',
  })
}

function reachesLungs(opening: 'nose' | 'face' | 'neck' | 'head', airway: AirwayState): boolean {
  if (opening === 'neck') return neckInUse(airway)
  if (opening === 'nose' && airway.route !== 'laryngectomy' && airway.nose === 'blocked')
    return false
  return upperAirwayInUse(airway)
}

function warnReading(
  node: Node,
  read: {
    readonly sinceMinutes: number | undefined
    readonly saturationPercent: number | undefined
  },
): void {
  const { warnings } = node.reading
  const path = pathOf(node, 'saturationPercent')
  if (!isGiven(node, 'saturationPercent')) warnings.push({ code: 'NO_READING', path, value: null })
  if (read.saturationPercent === undefined || read.sinceMinutes === undefined) return
  if (read.sinceMinutes >= SETTLING_MINUTES) return
  warnings.push({
    code: 'READING_MAY_NOT_HAVE_SETTLED',
    path: pathOf(node, 'sinceMinutes'),
    value: read.sinceMinutes,
    limit: { min: SETTLING_MINUTES },
    unit: 'min',
  })
}
