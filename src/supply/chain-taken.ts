// What a transfer takes from the chain of parts that the shelf builds for its set-up: tubes, meter, driving flow, whether a bias flow adds. Leaves out how chains are found (joining).
import type { Chain } from '../joining/chain.ts'
import { mainLine, placed } from '../joining/chain.ts'
import type { ChainPatient } from '../joining/patient-part.ts'
import { solveChains } from '../joining/solve-chains.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf, YesNoUnknown } from '../kit/shelf.ts'
import { USUAL_INTERFACE_ENDS } from '../kit/usual-ends.ts'
import { LONG_TUBE_BORE_MM_MAX, type TubeLength } from './long-tube.ts'

/** Why no chain is taken: interface or source is not on the shelf, parts are missing, or what is there does not join. */
export const NO_CHAIN_REASONS = ['NOT_ON_SHELF', 'PARTS_MISSING', 'DOES_NOT_JOIN'] as const
export type NoChainReason = (typeof NO_CHAIN_REASONS)[number]

export interface TakenChain {
  readonly kind: 'chain'
  /** Labels from the outlet on, the patient left out. */
  readonly parts: readonly string[]
  /** Small-bore tubes between meter and patient, in order, with the tubing fixed to the interface; empty where wide hoses lead there. */
  readonly tubes: readonly TubeLength[]
  /** Label of the meter that is set; null where a mixer stands in its place. */
  readonly meter: string | null
  /** Oxygen that drives a jet, as set on the chain's meters, L/min; null where nothing entrains air. */
  readonly drivingLpm: number | null
  /** What the shelf says of a ventilator or blender; null for meters. */
  readonly biasFlowAddsToUse: YesNoUnknown | null
}

export type ChainTaken =
  | TakenChain
  | { readonly kind: 'none'; readonly reason: NoChainReason; readonly lacking: readonly string[] }

export interface ChainQuestion {
  readonly setUp: SetUp
  readonly shelf: Shelf
  readonly patient: Omit<ChainPatient, 'airway'> & Partial<Pick<ChainPatient, 'airway'>>
  readonly barometricKpa: number
  /** A place of the shelf; the whole hospital where it is none. */
  readonly wardId?: string
}

/** The best chain of the first interface row of the family that the shelf can join for this set-up. Pressure as solveChains, else DomainError.
 *  Nothing is estimated: lengths, bores and marks are the shelf's. chain-taken.test.ts. */
export function chainTaken(question: ChainQuestion): ChainTaken {
  const { setUp, shelf } = question
  const rows = shelf.interfaces.filter(
    ({ family, sizes }) => family === setUp.family && sizes.some(({ size }) => size === setUp.size),
  )
  if (rows.length === 0 || !shelf.sources.some(({ id }) => id === setUp.source.id))
    return { kind: 'none', reason: 'NOT_ON_SHELF', lacking: [] }
  let lacking: readonly string[] | null = null
  for (const { id } of rows) {
    const answer = solveChains({
      ...solveQuestion(question),
      wanted: { ...setUp, interfaceId: id },
    })
    if (answer.kind === 'chains') return takenOf(answer.best.chain, setUp)
    if (answer.kind === 'missing') lacking ??= answer.missing.map(({ part }) => part.label)
  }
  return lacking === null
    ? { kind: 'none', reason: 'DOES_NOT_JOIN', lacking: [] }
    : { kind: 'none', reason: 'PARTS_MISSING', lacking }
}

function solveQuestion({ shelf, patient, barometricKpa, wardId, setUp }: ChainQuestion) {
  const isWard = shelf.wards.some(({ id }) => id === wardId)
  return {
    shelf,
    patient: { ...patient, airway: patient.airway ?? airwayFor(setUp) },
    barometricKpa,
    ...(wardId === undefined || !isWard ? {} : { wardId }),
  }
}

/** Nothing is known of the airway: the one that the interface is made for. */
function airwayFor({ family }: SetUp): ChainPatient['airway'] {
  const { outletEnd } = USUAL_INTERFACE_ENDS[family]
  if (outletEnd !== 'neck-rim' && outletEnd !== 'conical-15-female')
    return { route: 'natural', nose: 'open' }
  const tube = { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false }
  return { route: 'tracheostomy', nose: 'open', tube: { ...tube, cuff: 'up' } }
}

const METERS: readonly string[] = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
  'concentrator',
]

function takenOf(chain: Chain, setUp: SetUp): TakenChain {
  const line = mainLine(chain).map((at) => placed(chain, at))
  const meters = chain.parts.filter(({ part }) => METERS.includes(part.kind))
  const entrains =
    INTERFACE_FAMILIES[setUp.family].entrainsAir !== 'no' || setUp.source.kind === 'jet-nebuliser'
  return {
    kind: 'chain',
    parts: chain.parts.filter(({ part }) => part.kind !== 'patient').map(({ part }) => part.label),
    tubes: smallBore(line.flatMap(({ part: { tube } }) => (tube === null ? [] : [tube]))),
    meter: line.find(({ part }) => METERS.includes(part.kind))?.part.label ?? null,
    drivingLpm: entrains
      ? meters.reduce((sum, { setting }) => sum + (setting.flowLpm ?? 0), 0)
      : null,
    biasFlowAddsToUse: biasOf(chain),
  }
}

function smallBore(tubes: readonly TubeLength[]): readonly TubeLength[] {
  return tubes.every(({ boreMm }) => boreMm <= LONG_TUBE_BORE_MM_MAX)
    ? tubes.map(({ lengthM, boreMm }) => ({ lengthM, boreMm }))
    : []
}

function biasOf(chain: Chain): YesNoUnknown | null {
  const mixer = chain.parts.find(({ part }) => MIXERS.includes(part.kind))?.part.source
  return mixer === undefined ? null : (mixer.biasFlowAddsToUse ?? 'unknown')
}

const MIXERS: readonly string[] = ['blender', 'ventilator']
