// What a line still needs while the search walks from the patient back to the gas: its part of the chain, and what may be taken next. Leaves out ends and stock.
import type { PartSetting } from './chain.ts'
import type { Part } from './part.ts'
import type { Wanted } from './wanted.ts'

/**
 * main: the patient's own stream, up to its source. drive: oxygen that drives a jet. gas: from meter or mixer to its outlet.
 * air-main, air-drive: what feeds a collar.
 */
export type Stretch = 'main' | 'drive' | 'gas' | 'air-main' | 'air-drive'

export interface LineNeed {
  readonly stretch: Stretch
  readonly interfaceLeft: boolean
  readonly humidifierLeft: boolean
  readonly collarLeft: boolean
  readonly demandLpm: number
  /** Parts passed that change what the line still needs. */
  readonly hasFilter: boolean
  readonly hasOpening: boolean
  readonly hasTube: boolean
  readonly reachLeftMm: number
}

/** A part taken: what is set on it, and what each of its inlets then needs. Undefined where the part is not wanted here. */
export interface Taken {
  readonly setting: PartSetting
  readonly inletNeeds: readonly LineNeed[]
}

/** Same need at the same end a second time: what lies between can be left out. */
export function needKey(need: LineNeed): string {
  return [
    need.stretch,
    need.interfaceLeft,
    need.humidifierLeft,
    need.collarLeft,
    need.demandLpm,
    need.hasFilter,
    need.hasOpening,
    need.hasTube,
    need.reachLeftMm,
  ].join('|')
}

export function take(part: Part, need: LineNeed, wanted: Wanted): Taken | undefined {
  switch (part.kind) {
    case 'oxygen-tubing':
    case 'breathing-hose':
    case 'adapter':
    case 'filter':
    case 'open-t-piece':
    case 'exhalation-port':
      return passed(part, need)
    case 'y-piece':
      return part.inlets.length === 1 || DRIVES.includes(need.stretch)
        ? passed(part, need)
        : undefined
    case 'interface':
      return interfaceTaken(part, need, wanted)
    case 'bubble':
    case 'heated':
    case 'pass-over':
    case 'exchanger':
      return humidifierTaken(part, need, wanted)
    case 'collar':
      return collarTaken(part, need)
    case 'wall-outlet':
    case 'cylinder':
      return need.stretch === 'gas' ? { setting: {}, inletNeeds: [] } : undefined
    case 'air-flowmeter':
      return airMeterTaken(part, need)
    case 'wall-flowmeter':
    case 'two-flowmeters':
    case 'cylinder-regulator':
    case 'concentrator':
    case 'jet-nebuliser':
    case 'blender':
    case 'ventilator':
      return sourceTaken(part, need, wanted)
    default:
      return undefined
  }
}

const DRIVES: readonly Stretch[] = ['drive', 'air-drive']

/** An opening with a tube between it and the patient is refused whatever follows, so it is not tried. */
function passed(part: Part, need: LineNeed): Taken | undefined {
  const isOpening = part.isOpen || part.openEnds.length > 0
  if (isOpening && need.hasTube) return undefined
  const after = afterTube(part, {
    ...need,
    demandLpm: need.demandLpm / Math.max(1, part.inlets.length),
    hasFilter: need.hasFilter || part.kind === 'filter',
    hasOpening: need.hasOpening || isOpening,
    hasTube: need.hasTube || part.tube !== null,
  })
  return { setting: {}, inletNeeds: part.inlets.map(() => after) }
}

const MM_PER_M = 1000

function afterTube(part: Part, need: LineNeed): LineNeed {
  const lengthMm = Math.round((part.tube?.lengthM ?? 0) * MM_PER_M)
  return { ...need, reachLeftMm: Math.max(0, need.reachLeftMm - lengthMm) }
}

function interfaceTaken(part: Part, need: LineNeed, wanted: Wanted): Taken | undefined {
  if (need.stretch !== 'main' || !need.interfaceLeft) return undefined
  if (part.id !== wantedInterface(wanted)) return undefined
  const after = afterTube(part, {
    ...need,
    interfaceLeft: false,
    hasOpening: need.hasOpening || part.isOpen || part.openEnds.length > 0,
  })
  const inletNeeds = part.inlets.map((end, i): LineNeed => {
    if (end === 'air-ports') return { ...after, stretch: 'air-main', collarLeft: true }
    return i === 0 ? after : { ...after, demandLpm: wanted.overFlowLpm ?? wanted.flowLpm }
  })
  const isValve = part.fractions !== undefined && wanted.o2Fraction !== undefined
  return { setting: isValve ? { o2Fraction: wanted.o2Fraction ?? 1 } : {}, inletNeeds }
}

export function wantedInterface({ interfaceId, size }: Wanted): string | null {
  return interfaceId === null ? null : `${interfaceId}/${size ?? ''}`
}

function humidifierTaken(part: Part, need: LineNeed, wanted: Wanted): Taken | undefined {
  if (need.stretch !== 'main' || !need.humidifierLeft) return undefined
  if (part.kind !== wanted.humidification) return undefined
  const after: LineNeed = { ...need, humidifierLeft: false }
  return { setting: {}, inletNeeds: part.inlets.map(() => after) }
}

function collarTaken(part: Part, need: LineNeed): Taken | undefined {
  if (need.stretch !== 'air-main' || !need.collarLeft) return undefined
  const after: LineNeed = { ...need, collarLeft: false }
  return { setting: {}, inletNeeds: part.inlets.map(() => after) }
}

/** The air that feeds a collar is set to the highest mark that its jet may be driven with. */
function airMeterTaken(part: Part, need: LineNeed): Taken | undefined {
  if (need.stretch !== 'air-drive') return undefined
  const flowLpm = part.marksLpm?.findLast((mark) => mark <= need.demandLpm)
  if (flowLpm === undefined) return undefined
  return { setting: { flowLpm }, inletNeeds: part.inlets.map(() => ({ ...need, stretch: 'gas' })) }
}

function sourceTaken(part: Part, need: LineNeed, wanted: Wanted): Taken | undefined {
  if (need.stretch === 'air-main') return collarJetTaken(part, need)
  if (need.stretch === 'drive') return driveTaken(part, need)
  if (need.stretch !== 'main' || part.id !== wanted.sourceId) return undefined
  if (need.interfaceLeft || need.humidifierLeft) return undefined
  const o2Fraction = part.fractions === undefined ? {} : { o2Fraction: wanted.o2Fraction ?? 1 }
  if (part.kind === 'jet-nebuliser') {
    const each = {
      ...need,
      stretch: 'drive',
      demandLpm: need.demandLpm / part.inlets.length,
    } as const
    return { setting: o2Fraction, inletNeeds: part.inlets.map(() => each) }
  }
  const setting: PartSetting = {
    flowLpm: need.demandLpm,
    ...o2Fraction,
    ...(wanted.isFlush === true ? { isFlush: true } : {}),
    ...(part.kind === 'ventilator' ? { mode: wanted.mode ?? 'constant-flow' } : {}),
  }
  return { setting, inletNeeds: part.inlets.map(() => ({ ...need, stretch: 'gas' })) }
}

const DRIVING: readonly Part['kind'][] = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
  'concentrator',
]

function driveTaken(part: Part, need: LineNeed): Taken | undefined {
  if (!DRIVING.includes(part.kind)) return undefined
  return {
    setting: { flowLpm: need.demandLpm },
    inletNeeds: part.inlets.map(() => ({ ...need, stretch: 'gas' })),
  }
}

/** A jet driven by air makes the mist that a collar brings; its dial stands at its highest setting. */
function collarJetTaken(part: Part, need: LineNeed): Taken | undefined {
  if (need.collarLeft || part.source?.kind !== 'jet-nebuliser') return undefined
  const demandLpm = part.source.driveLpmMax
  const o2Fraction = part.source.settings.at(-1) ?? 1
  return {
    setting: { o2Fraction },
    inletNeeds: part.inlets.map(() => ({ ...need, stretch: 'air-drive', demandLpm })),
  }
}
