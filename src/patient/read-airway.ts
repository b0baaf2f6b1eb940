// Reads the airway state: route, tube, nose. Refuses what must not stand together on one tube. Leaves out which interface suits it.
import type {
  AirwayState,
  NoseState,
  TracheostomyTube,
  TubeCuff,
} from '../physiology/airway-state.ts'
import { CUFF_ALIASES, FIELD_ALIASES, NOSE_ALIASES, ROUTE_ALIASES } from './aliases.ts'
import { KEYS } from './case-fields.ts'
import {
  isGiven,
  openObject,
  pathOf,
  problemValue,
  readChoice,
  readSwitch,
  report,
  reportMissing,
  type Node,
} from './field.ts'
import type { ErrorCode } from '../errors.ts'

export const ROUTES = ['natural', 'tracheostomy', 'laryngectomy'] as const
export const NOSE_STATES = [
  'open',
  'one-side-blocked',
  'blocked',
] as const satisfies readonly NoseState[]
export const CUFFS = ['up', 'down', 'none'] as const satisfies readonly TubeCuff[]

const KEYS_OF_ROUTE = {
  natural: KEYS.naturalAirway,
  tracheostomy: KEYS.tracheostomyAirway,
  laryngectomy: KEYS.laryngectomyAirway,
} as const

export function readAirway(patient: Node): AirwayState | undefined {
  if (!isGiven(patient, 'airway')) return reportMissing(patient, 'airway')
  const value = patient.fields.get('airway')
  const path = pathOf(patient, 'airway')
  const { reading } = patient
  const anyRoute = { reading, path, value, aliases: FIELD_ALIASES }
  const route = routeOf({ ...anyRoute, keys: ['route'] })
  if (route === undefined) return undefined
  const node = openObject({ ...anyRoute, keys: KEYS_OF_ROUTE[route] })
  return node === undefined ? undefined : airwayOfRoute(node, route)
}

/** Looks at the route alone, so that the other fields are judged by the keys that route has. */
function routeOf(options: Parameters<typeof openObject>[0]): (typeof ROUTES)[number] | undefined {
  const { value, reading, path } = options
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return report(reading, { code: 'NOT_AN_OBJECT', path, value: problemValue(value) })
  }
  const node = { reading, path, fields: new Map<string, unknown>(Object.entries(value)) }
  return readChoice(node, 'route', { choices: ROUTES, aliases: ROUTE_ALIASES, isRequired: true })
}

function airwayOfRoute(node: Node, route: (typeof ROUTES)[number]): AirwayState | undefined {
  if (route === 'laryngectomy') {
    const heatMoistureExchanger = readSwitch(node, 'heatMoistureExchanger')
    return heatMoistureExchanger === undefined ? undefined : { route, heatMoistureExchanger }
  }
  const nose = readChoice(node, 'nose', {
    choices: NOSE_STATES,
    aliases: NOSE_ALIASES,
    isRequired: true,
  })
  if (route === 'natural') return nose === undefined ? undefined : { route, nose }
  const tube = readTube(node)
  return nose === undefined || tube === undefined ? undefined : { route, tube, nose }
}

function readTube(airway: Node): TracheostomyTube | undefined {
  if (!isGiven(airway, 'tube')) return reportMissing(airway, 'tube')
  const node = openObject({
    reading: airway.reading,
    path: pathOf(airway, 'tube'),
    value: airway.fields.get('tube'),
    keys: KEYS.tube,
    aliases: FIELD_ALIASES,
  })
  if (node === undefined) return undefined
  const cuff = readChoice(node, 'cuff', { choices: CUFFS, aliases: CUFF_ALIASES, isRequired: true })
  const speakingValve = readSwitch(node, 'speakingValve')
  const capped = readSwitch(node, 'capped')
  const heatMoistureExchanger = readSwitch(node, 'heatMoistureExchanger')
  if (cuff === undefined || speakingValve === undefined) return undefined
  if (capped === undefined || heatMoistureExchanger === undefined) return undefined
  const tube = { cuff, speakingValve, capped, heatMoistureExchanger }
  reportForbidden(node, tube)
  return tube
}

interface ForbiddenPair {
  readonly code: ErrorCode
  readonly key: keyof TracheostomyTube
  readonly holds: (tube: TracheostomyTube) => boolean
}

/** With the cuff up nothing can be breathed out past the tube; a closed or one-way tube passes nothing back through an exchanger (common practice). */
const FORBIDDEN: readonly ForbiddenPair[] = [
  {
    code: 'SPEAKING_VALVE_WITH_CUFF_UP',
    key: 'speakingValve',
    holds: (tube) => tube.speakingValve && tube.cuff === 'up',
  },
  {
    code: 'CAPPED_WITH_CUFF_UP',
    key: 'capped',
    holds: (tube) => tube.capped && tube.cuff === 'up',
  },
  {
    code: 'CAPPED_WITH_SPEAKING_VALVE',
    key: 'capped',
    holds: (tube) => tube.capped && tube.speakingValve,
  },
  {
    code: 'CAPPED_WITH_EXCHANGER',
    key: 'heatMoistureExchanger',
    holds: (tube) => tube.capped && tube.heatMoistureExchanger,
  },
  {
    code: 'SPEAKING_VALVE_WITH_EXCHANGER',
    key: 'heatMoistureExchanger',
    holds: (tube) => tube.speakingValve && tube.heatMoistureExchanger,
  },
]

function reportForbidden(node: Node, tube: TracheostomyTube): void {
  for (const { code, key, holds } of FORBIDDEN) {
    if (holds(tube)) report(node.reading, { code, path: pathOf(node, key), value: tube[key] })
  }
}
