// Reads a ward file from parsed JSON or YAML: everything wrong at once, or the ward as typed. Leaves out parsing of text.
import type { Problem } from '../errors.ts'
import {
  given,
  isGiven,
  pathOf,
  readChoice,
  readNumber,
  report,
  reportMissing,
  type Node,
} from '../patient/field.ts'
import type { RetentionRisk } from '../patient/case.ts'
import { PIPELINE_AREAS } from './pipeline.ts'
import {
  openAt,
  openEach,
  optionalSwitch,
  optionalText,
  readBeside,
  readWhole,
  readGauge,
  readSetUpField,
  readVersion,
  requiredNumber,
  requiredText,
  wholeNumber,
} from './supply-field.ts'
import { SUPPLY_KEYS, SUPPLY_NUMBERS } from './supply-fields.ts'
import {
  MIXER_DRIVES,
  OXYGEN_PLANTS,
  WARD_VERSION,
  type Bed,
  type BedCylinder,
  type BulkTank,
  type Manifold,
  type WardFile,
  type WardSupply,
} from './ward.ts'

export type ReadWard =
  | { readonly ok: true; readonly ward: WardFile }
  | { readonly ok: false; readonly problems: readonly Problem[] }

const RETENTION_RISKS = [
  'none',
  'at-risk',
  'known-retainer',
] as const satisfies readonly RetentionRisk[]

/** Every problem at once. What is read is kept as typed; pressures in bar or psi become kPa, nothing else changes. */
export function readWard(input: unknown): ReadWard {
  const read = readWhole(input, SUPPLY_KEYS.ward, wardOf)
  return read.ok ? { ok: true, ward: read.value } : read
}

function wardOf(root: Node): WardFile | undefined {
  readVersion(root, WARD_VERSION)
  const hospital = requiredText(root, 'hospital')
  const ward = requiredText(root, 'ward')
  const rest = given({
    isInvented: optionalSwitch(root, 'isInvented'),
    note: optionalText(root, 'note'),
    altitudeM: readNumber(root, 'altitudeM', SUPPLY_NUMBERS.altitudeM),
    barometricPressureKpa: readNumber(
      root,
      'barometricPressureKpa',
      SUPPLY_NUMBERS.barometricPressureKpa,
    ),
    roomC: readNumber(root, 'roomC', SUPPLY_NUMBERS.gasC),
  })
  const supply = readSupply(root)
  const nodes = openEach(root, 'beds', SUPPLY_KEYS.bed, { isRequired: true })
  const beds = nodes.flatMap((node) => readBed(node) ?? [])
  reportTwice(nodes, beds)
  if (isGiven(root, 'beds') && nodes.length === 0)
    report(root.reading, { code: 'COUNT_OUT_OF_RANGE', path: 'beds', value: 0, limit: { min: 1 } })
  if (hospital === undefined || ward === undefined || supply === undefined) return undefined
  return { version: WARD_VERSION, hospital, ward, ...rest, supply, beds }
}

function reportTwice(nodes: readonly Node[], beds: readonly Bed[]): void {
  beds.forEach(({ bed }, i) => {
    const [node] = nodes
    if (node === undefined || beds.findIndex((one) => one.bed === bed) === i) return
    report(node.reading, { code: 'DUPLICATE_ID', path: `beds[${i}].bed`, value: bed })
  })
}

function readSupply(root: Node): WardSupply | undefined {
  if (!isGiven(root, 'supply')) return reportMissing(root, 'supply')
  const node = openAt(root, 'supply', SUPPLY_KEYS.supply)
  if (node === undefined) return undefined
  const area = readChoice(node, 'area', { choices: PIPELINE_AREAS, isRequired: true })
  const rest = given({
    plant: readChoice(node, 'plant', { choices: OXYGEN_PLANTS }),
    plantsHaveGenerator: optionalSwitch(node, 'plantsHaveGenerator'),
    branchLpmMax: readNumber(node, 'branchLpmMax', SUPPLY_NUMBERS.supplyLpm),
    outletLpmMax: readNumber(node, 'outletLpmMax', SUPPLY_NUMBERS.supplyLpm),
    manifold: readManifold(node),
    bulk: readBulk(node),
    restOfHospitalLpm: readNumber(node, 'restOfHospitalLpm', SUPPLY_NUMBERS.supplyLpm),
  })
  return area === undefined ? undefined : { area, ...rest }
}

function readManifold(supply: Node): Manifold | undefined {
  const node = openAt(supply, 'manifold', SUPPLY_KEYS.manifold)
  if (node === undefined) return undefined
  const waterVolumeL = requiredNumber(node, 'waterVolumeL', SUPPLY_NUMBERS.waterVolumeL)
  const gaugeKpa = readGauge(node, 'gauge', { isRequired: true })
  const leftGaugeKpa = readGauge(node, 'left', { isRequired: true })
  const count = isGiven(node, 'count')
    ? wholeNumber(node, 'count', SUPPLY_NUMBERS.count)
    : reportMissing(node, 'count')
  if (
    waterVolumeL === undefined ||
    gaugeKpa === undefined ||
    leftGaugeKpa === undefined ||
    count === undefined
  )
    return undefined
  return { waterVolumeL, gaugeKpa, count, leftGaugeKpa }
}

function readBulk(supply: Node): BulkTank | undefined {
  const node = openAt(supply, 'bulk', SUPPLY_KEYS.bulk)
  if (node === undefined) return undefined
  const liquidL = requiredNumber(node, 'liquidL', SUPPLY_NUMBERS.liquidL)
  const evaporationLPerDay = readNumber(node, 'evaporationLPerDay', SUPPLY_NUMBERS.liquidL)
  return liquidL === undefined ? undefined : { liquidL, ...given({ evaporationLPerDay }) }
}

function readBed(node: Node): Bed | undefined {
  const bed = requiredText(node, 'bed')
  const setUp = readSetUpField(node)
  const cylinders = isGiven(node, 'cylinders')
    ? openEach(node, 'cylinders', SUPPLY_KEYS.bedCylinder, { isRequired: false }).flatMap(
        (one) => readBedCylinder(one) ?? [],
      )
    : undefined
  const rest = given({
    code: optionalText(node, 'code'),
    isEmpty: optionalSwitch(node, 'isEmpty'),
    ageYears: readNumber(node, 'ageYears', SUPPLY_NUMBERS.ageYears),
    weightKg: readNumber(node, 'weightKg', SUPPLY_NUMBERS.weightKg),
    retentionRisk: readChoice(node, 'retentionRisk', { choices: RETENTION_RISKS }),
    beside: readBeside(node),
    hasHeatedHumidifier: optionalSwitch(node, 'hasHeatedHumidifier'),
    mixerDrive: readChoice(node, 'mixerDrive', { choices: MIXER_DRIVES }),
    batteryMinutes: readNumber(node, 'batteryMinutes', SUPPLY_NUMBERS.minutes),
    cylinders,
    oxygenOutlets: wholeNumber(node, 'oxygenOutlets', SUPPLY_NUMBERS.outlets),
    airOutlets: wholeNumber(node, 'airOutlets', SUPPLY_NUMBERS.outlets),
  })
  if (rest.isEmpty === true && isGiven(node, 'setUp'))
    report(node.reading, { code: 'CONTRADICTION', path: pathOf(node, 'isEmpty'), value: true })
  return bed === undefined ? undefined : { bed, ...rest, ...(setUp === undefined ? {} : { setUp }) }
}

function readBedCylinder(node: Node): BedCylinder | undefined {
  const waterVolumeL = requiredNumber(node, 'waterVolumeL', SUPPLY_NUMBERS.waterVolumeL)
  const gaugeKpa = readGauge(node, 'gauge', { isRequired: true })
  const isValveOpen = optionalSwitch(node, 'isValveOpen')
  if (!isGiven(node, 'isValveOpen')) reportMissing(node, 'isValveOpen')
  if (waterVolumeL === undefined || gaugeKpa === undefined || isValveOpen === undefined)
    return undefined
  return { waterVolumeL, gaugeKpa, isValveOpen }
}
