// Chains in words: parts in order with each join, remarks, missing parts. Leaves out refusals (joining-refusals.ts).
import type { Chain, PlacedPart } from '../joining/chain.ts'
import { endsOf } from '../joining/check-joins.ts'
import { matingRule } from '../joining/mating-rules.ts'
import type { ChainRemark, ChainRemarkCode } from '../joining/remarks.ts'
import type { MissingPart } from '../joining/solve-chains.ts'
import type { Shelf } from '../kit/shelf.ts'
import { AFTER_NAMES, END_NAMES, HOLD_NAMES } from './joining-names.ts'
import { flowText, fractionText, numberText } from './number-text.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkText, RemarkValues } from './remark-value.ts'
import { say, translated } from './say.ts'

const PRESSURE_STEP_KPA = 0.1
/** A jet minds less than the joints of a tube do. */
const JET_STEP_KPA = 0.01
const FLOW_STEP_LPM = 0.1

const part = (v: RemarkValues): string => translated(textOf(v, 'part'))
const after = (v: RemarkValues): string => nameIn(AFTER_NAMES, textOf(v, 'after'))
const pressure = (v: RemarkValues): string =>
  numberText(numberOf(v, 'pressureKpa'), PRESSURE_STEP_KPA)
const jetPressure = (v: RemarkValues, key: string): string =>
  numberText(numberOf(v, key), JET_STEP_KPA)

export const CHAIN_REMARK_TEXTS: Readonly<Record<ChainRemarkCode, RemarkText>> = {
  NO_BREATHS_GIVEN: (v) =>
    say('{part} is a source of gas here: it gives no breaths', { part: part(v) }),
  NO_ALARM_TO_COUNT_ON: () =>
    say('no apnoea or disconnection alarm may be counted on: watch the patient'),
  INSPIRATORY_LIMB_ONLY: () => say('inspiratory limb only; the expiratory side stays empty'),
  NEEDS_BOTH_GASES: (v) => say('{part} needs oxygen and air at the wall', { part: part(v) }),
  NEEDS_MAINS: (v) => say('{part} needs mains', { part: part(v) }),
  WHEN_AIR_FAILS: (v) =>
    say('if air fails, {part} gives: {after}', { part: part(v), after: after(v) }),
  WHEN_OXYGEN_FAILS: (v) =>
    say('if oxygen fails, {part} gives: {after}', { part: part(v), after: after(v) }),
  WHEN_MAINS_FAILS: (v) =>
    say('if mains fail, {part} gives: {after}', { part: part(v), after: after(v) }),
  BIAS_FLOW_USE: (v) => addsText(v, 'bias'),
  LEAK_COMPENSATION_USE: (v) => addsText(v, 'leak'),
  LIMB_FILTER: (v) => filterText(v),
  MODE_TO_SET: (v) =>
    say('set {part} to {mode}: an even stream', { part: part(v), mode: textOf(v, 'mode') }),
  MODE_NOT_STATED: (v) =>
    say('which mode of {part} streams evenly is not on the shelf: ask before use', {
      part: part(v),
    }),
  METER_READS_LOW: (v) =>
    say(
      '{part} set to {flow} with {pressure} kPa behind it: {true} really flow, as litres of its scale',
      {
        part: part(v),
        flow: flowText(numberOf(v, 'flowLpm')),
        true: flowText(numberOf(v, 'trueLpm'), FLOW_STEP_LPM),
        pressure: pressure(v),
      },
    ),
  METER_READS_LOW_UNKNOWN: (v) =>
    say(
      '{part} shows less than flows, by more than can be worked out: a part behind it holds the gas back',
      {
        part: part(v),
      },
    ),
  ENTRAINMENT_DISTURBED: (v) =>
    say(
      '{pressure} kPa behind {part}, above {limit} kPa: it draws less air than set. Total flow falls from {total}, at most to {drive}; the fraction rises from {set}, at most to {most}. How far, no measurement says',
      {
        part: part(v),
        pressure: jetPressure(v, 'pressureKpa'),
        limit: jetPressure(v, 'limitKpa'),
        total: flowText(numberOf(v, 'setLpm'), FLOW_STEP_LPM),
        drive: flowText(numberOf(v, 'leastLpm'), FLOW_STEP_LPM),
        set: fractionText(numberOf(v, 'o2Fraction')),
        most: fractionText(numberOf(v, 'mostO2Fraction')),
      },
    ),
  PRESSURE_LOSS_NOT_KNOWN: (v) =>
    say('the pressure lost in {part} is not known and not counted', { part: part(v) }),
  WATER_IN_LOOP: (v) =>
    textOf(v, 'trap') === 'yes'
      ? say('water gathers in {part}: trap at the lowest place, empty it away from the patient', {
          part: part(v),
        })
      : say(
          'water gathers in {part}, which has no trap: let no loop hang, drain it away from the patient',
          {
            part: part(v),
          },
        ),
  RATED_FROM_LABEL: (v) => say('{part}: limits as printed on it', { part: part(v) }),
  COLLAR_TAKES_AIR: (v) => say('{part} brings moist air, never oxygen', { part: part(v) }),
}

function addsText(v: RemarkValues, what: 'bias' | 'leak'): string {
  const adds = textOf(v, 'adds')
  if (what === 'bias') {
    if (adds === 'yes')
      return say('{part} draws gas beyond this flow: bias flow', { part: part(v) })
    if (adds === 'no') return say('{part} draws no bias flow', { part: part(v) })
    return say('whether {part} draws bias flow is not known', { part: part(v) })
  }
  if (adds === 'yes')
    return say('{part} draws gas beyond this flow: leak compensation', { part: part(v) })
  if (adds === 'no') return say('{part} does not compensate leaks', { part: part(v) })
  return say('whether {part} draws gas to compensate leaks is not known', { part: part(v) })
}

function filterText(v: RemarkValues): string {
  const own = textOf(v, 'own')
  if (own === 'yes')
    return say('{part} has a filter of its own on the inspiratory limb', { part: part(v) })
  if (own === 'no')
    return say('{part} has no filter of its own: one belongs on the limb', { part: part(v) })
  return say('whether {part} has a filter of its own is not known: one belongs on the limb', {
    part: part(v),
  })
}

export function chainRemarkText(remark: Pick<ChainRemark, 'code' | 'values'>): string {
  return CHAIN_REMARK_TEXTS[remark.code](remark.values)
}

/** A part that is missing, and where to borrow it. */
export function missingPartText(missing: MissingPart, wards: Shelf['wards']): string {
  const { part: lacking, count, wardIds } = missing
  const names = wardIds.map((id) => wards.find((ward) => ward.id === id)?.name ?? id).join(', ')
  if (wardIds.length === 0)
    return say('{count} × {part}: no ward has it', { count, part: translated(lacking.label) })
  return say('{count} × {part}: borrow it from {wards}', {
    count,
    part: translated(lacking.label),
    wards: names,
  })
}

export const CHAIN_WORDS = {
  chain: say('Chain, from the outlet to the patient'),
  waysOut: say('Ways out for surplus and expired gas'),
  pressure: say('Pressure behind the source'),
  leakPoints: say('Joints that come apart most easily'),
  sizes: say('Nominal sizes of the joints, shown and never judged'),
  water: say('Water at the airway'),
  remarks: say('Mind'),
  alternatives: say('Alternatives'),
  missing: say('Missing'),
  withThem: say('With them'),
  orElse: say('Or instead'),
  refused: say('This cannot be joined'),
  mend: say('Mend'),
  open: say('way out'),
} as const

/** A join by what holds it and the two ends; ends that do not mate by name alone. */
export function joinText(chain: Chain, at: number): string {
  const join = chain.joins[at]
  const { from, to } = join === undefined ? { from: null, to: null } : endsOf(chain, join)
  if (from === null || to === null) return ''
  const rule = matingRule(from, to)
  const ends = { from: END_NAMES[from], to: END_NAMES[to] }
  return rule === undefined
    ? say('does not hold: {from} to {to}', { from: ends.from, to: ends.to })
    : say('{hold}: {from} to {to}', {
        hold: HOLD_NAMES[rule.heldBy],
        from: ends.from,
        to: ends.to,
      })
}

/** A part by its label with what is set on it; the patient by where the gas goes. */
export function partText({ part: one, setting }: PlacedPart): string {
  const [opening] = one.inlets
  if (one.kind === 'patient' && opening === 'conical-15-male')
    return say('Patient: tracheostomy tube')
  if (one.kind === 'patient' && opening !== undefined)
    return say('Patient: {place}', { place: END_NAMES[opening] })
  if (one.kind === 'other-line' && opening !== undefined) return END_NAMES[opening]
  const set = [
    ...(setting.isFlush === true ? [say('opened fully')] : flowsOf(setting)),
    ...(setting.o2Fraction === undefined ? [] : [fractionText(setting.o2Fraction)]),
  ]
  const label = translated(one.label)
  return set.length === 0 ? label : say('{part}, {set}', { part: label, set: set.join(', ') })
}

function flowsOf(setting: PlacedPart['setting']): readonly string[] {
  return setting.flowLpm === undefined ? [] : [flowText(setting.flowLpm)]
}

/** How many faults a chain has, or that it has none. */
export function chainTitleText(faults: number): string {
  if (faults === 0) return say('Chain from the gas outlet to the patient')
  return say('{count, plural, one {Chain with # fault} other {Chain with # faults}}', {
    count: faults,
  })
}

/** Where a part gives when that is not the next one. */
export function givesIntoText(place: number): string {
  return say('gives into {place}', { place })
}
