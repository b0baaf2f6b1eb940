// What breaks a tie between set-ups the draws cannot tell apart: harm (outside the goal, unchecked, what can fail), comfort, humidity, gas used, changes.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { FamilyId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { SourceKind } from '../kit/source-row.ts'
import type { InterfaceChange, SetUpOnNow } from '../patient/case.ts'

/** How much a patient bears with each family, 0 (hardly noticed) to 5 (common practice). */
const WEARING: Readonly<Record<FamilyId, number>> = {
  'nasal-cannula': 0,
  'tracheostomy-mask': 0,
  't-piece': 1,
  't-piece-with-limb': 1,
  'head-box': 1,
  'face-tent': 1,
  'nasal-catheter': 2,
  'nasal-high-flow': 2,
  'entrainment-mask': 2,
  'adjustable-entrainment-mask': 2,
  'simple-mask': 2,
  'aerosol-mask': 2,
  'partial-rebreather-mask': 3,
  'non-rebreather-mask': 3,
  'cannula-under-mask': 4,
}

type Place = 'face' | 'nose'

/** What a change of the interface adds to the burden of masks or of nasal devices (common practice). */
const CHANGE_BURDEN: Readonly<
  Partial<Record<InterfaceChange, { readonly on: Place; readonly adds: number }>>
> = {
  beard: { on: 'face', adds: 1 },
  'no-teeth': { on: 'face', adds: 1 },
  'vomiting-risk': { on: 'face', adds: 2 },
  'feeding-tube': { on: 'face', adds: 1 },
  'glasses-or-hearing-aids': { on: 'face', adds: 1 },
  claustrophobic: { on: 'face', adds: 3 },
  'must-eat-and-talk': { on: 'face', adds: 3 },
  'confused-and-pulling': { on: 'face', adds: 1 },
  prone: { on: 'face', adds: 1 },
}

/** What each number of a burden is, in its order, as the reason that puts a set-up after another. */
export const BURDEN_REASONS = [
  'EQUAL_BUT_MORE_HARM',
  'EQUAL_BUT_NOT_CHECKED',
  'EQUAL_BUT_MORE_TO_HANDLE',
  'EQUAL_BUT_OTHER_SIZE',
  'EQUAL_BUT_LESS_COMFORT',
  'EQUAL_BUT_DRIER',
  'EQUAL_BUT_MORE_OXYGEN',
  'EQUAL_BUT_MORE_CHANGES',
] as const

/** Numbers compared in order; lower is better. Their order is that of BURDEN_REASONS. */
export function burdenOf(
  setUp: SetUp,
  about: {
    readonly changes: readonly InterfaceChange[]
    readonly oxygenUsedLpm: number
    readonly harm: number
    readonly sizeIsPreferred: boolean
    readonly onNow: SetUpOnNow | null
  },
): readonly number[] {
  return [
    roundTo(about.harm, 0.1),
    Number(!INTERFACE_FAMILIES[setUp.family].isChecked),
    HANDLING[setUp.source.kind],
    about.sizeIsPreferred ? 0 : 1,
    comfortBurden(setUp, about.changes),
    setUp.humidification === 'none' &&
    (setUp.flow.kind === 'flush' || setUp.flow.flowLpm > DRY_FLOW_LPM)
      ? 1
      : 0,
    roundTo(about.oxygenUsedLpm, 0.5),
    changesFrom(setUp, about.onNow),
  ]
}

/** What can fail in a source: one meter on the wall, or more parts, gas that runs out, mains and both gases (common practice). */
const HANDLING: Readonly<Record<SourceKind, number>> = {
  'wall-flowmeter': 0,
  'two-flowmeters': 1,
  'jet-nebuliser': 1,
  blender: 2,
  concentrator: 2,
  'cylinder-regulator': 2,
  ventilator: 3,
}

/** Above this a dry nose is felt (Poiroux2018, Piraino2022). */
export const DRY_FLOW_LPM = 4

export function comfortBurden(setUp: SetUp, changes: readonly InterfaceChange[]): number {
  const { opening } = INTERFACE_FAMILIES[setUp.family]
  const added = changes.map((change) => {
    const row = CHANGE_BURDEN[change]
    return row !== undefined && row.on === opening ? row.adds : 0
  })
  return WEARING[setUp.family] + added.reduce((sum, one) => sum + one, 0)
}

/** How many things must be changed from what is on: interface, source, flow or setting. */
function changesFrom(setUp: SetUp, onNow: SetUpOnNow | null): number {
  if (onNow === null) return 0
  const flowLpm = setUp.flow.kind === 'flush' ? 'flush' : setUp.flow.flowLpm
  return (
    Number(onNow.family !== setUp.family) +
    Number(onNow.sourceKind !== setUp.source.kind) +
    Number(onNow.flowLpm !== flowLpm) +
    Number((onNow.setO2Fraction ?? null) !== setUp.setO2Fraction)
  )
}

function roundTo(value: number, step: number): number {
  return Math.round(value / step) * step
}
