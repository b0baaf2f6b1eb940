// What a ward draws against what its pipework was designed for, its outlets, and the hours that manifold or tank last; and what one more patient does. Leaves out pressure loss in pipes.
import { requireWithin } from '../errors.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { SetUpOnNow } from '../patient/case.ts'
import {
  simulatedDemand,
  USUAL_SIMULATION,
  type SimulatedDemand,
  type SimulationRule,
} from './demand-simulation.ts'
import { ROOM_C } from './lights-out.ts'
import { AREA_RULES, designFlowLpm, manifoldHours, tankHours } from './pipeline.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'
import { bedAnswer, wardPressureKpa, type BedAnswer } from './ward-bed.ts'
import type { Bed, WardFile } from './ward.ts'

export interface DemandQuestion {
  readonly ward: WardFile
  readonly shelf: Shelf
  readonly simulation?: SimulationRule
  /** The patient more; nasal high flow of pure oxygen at 60 L/min where absent. */
  readonly oneMore?: SetUpOnNow
}

export interface Autonomy {
  /** With the draw of the rest of the hospital; null: not known or nothing drawn. */
  readonly manifoldHours: number | null
  readonly tankShortestHours: number | null
  readonly tankLongestHours: number | null
}

export interface WardDemand {
  readonly barometricKpa: number
  readonly beds: readonly BedAnswer[]
  readonly drawnLpm: number
  readonly airLpm: number
  readonly unknownBeds: number
  readonly designLpm: number
  readonly autonomy: Autonomy
  readonly simulation: SimulatedDemand
  readonly oneMore: {
    readonly setUp: SetUpOnNow
    readonly moreLpm: number
    readonly drawnLpm: number
    readonly autonomy: Autonomy
    readonly remarks: readonly SupplyRemark[]
  }
  readonly remarks: readonly SupplyRemark[]
}

/** The heaviest draw of one bed in use. */
export const ONE_MORE_HIGH_FLOW: SetUpOnNow = {
  family: 'nasal-high-flow',
  sourceKind: 'blender',
  flowLpm: 60,
  setO2Fraction: 1,
}

/** What a ward draws: sums over gasDrawn, the design flow beside it [Htm2006, from memory], hours of manifold and tank, a simulation, and
 *  one more high-flow patient. Valid as gasDrawn, designFlowLpm, manifoldHours, tankHours and simulatedDemand, else their DomainError.
 *  Exact arithmetic; the percentiles err by their sample (ward-demand.test.ts). */
export function wardDemand(question: DemandQuestion): WardDemand {
  const { ward, shelf } = question
  const barometricKpa = wardPressureKpa(ward)
  const place = { shelf, barometricKpa }
  const beds = ward.beds.map((bed) => bedAnswer(bed, place))
  const drawnLpm = sum(beds.map(({ pipelineLpm }) => pipelineLpm))
  const designLpm = designFlowLpm({ area: ward.supply.area, places: ward.beds.length })
  const setUp = checkedMore(question.oneMore ?? ONE_MORE_HIGH_FLOW)
  const moreLpm = bedAnswer({ bed: '', setUp }, place).pipelineLpm
  const rule = question.simulation ?? USUAL_SIMULATION
  const autonomy = autonomyOf(ward, drawnLpm, barometricKpa)
  const withMore = drawnLpm + moreLpm
  return {
    barometricKpa,
    beds,
    drawnLpm,
    airLpm: sum(beds.map(({ airLpm }) => airLpm)),
    unknownBeds: beds.filter(({ feed }) => feed === 'unknown').length,
    designLpm,
    autonomy,
    simulation: simulatedDemand(beds, barometricKpa, rule),
    oneMore: {
      setUp,
      moreLpm,
      drawnLpm: withMore,
      autonomy: autonomyOf(ward, withMore, barometricKpa),
      remarks: oneMoreRemarks(ward, { drawnLpm, withMore, designLpm }),
    },
    remarks: [
      ...(ward.isInvented === true ? [supplyRemark('SUPPLY_WARD_INVENTED')] : []),
      ...demandRemarks(ward, { drawnLpm, designLpm }),
      ...outletRemarks(ward, beds),
      ...unknownRemarks(beds),
      ...beds
        .flatMap(({ drawn }) => drawn?.remarks ?? [])
        .filter(({ code }) => code === 'BIAS_FLOW_UNKNOWN')
        .slice(0, 1),
      supplyRemark('SIMULATION_ASSUMES', {
        awayShare: rule.awayShare,
        upShare: rule.upShare,
        downShare: rule.downShare,
      }),
    ],
  }
}

function unknownRemarks(beds: readonly BedAnswer[]): readonly SupplyRemark[] {
  const unknown = beds.filter(({ feed }) => feed === 'unknown').map(({ bed }) => bed.bed)
  return unknown.length === 0
    ? []
    : [supplyRemark('BEDS_NOT_COUNTED', { beds: unknown.join(', ') })]
}

function checkedMore(setUp: SetUpOnNow): SetUpOnNow {
  if (setUp.flowLpm === 'flush') return setUp
  const bounds = {
    path: 'oneMore.flowLpm',
    value: setUp.flowLpm,
    min: 0.01,
    max: 100,
    unit: 'L/min',
  }
  requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
  return setUp
}

function autonomyOf(ward: WardFile, wardLpm: number, barometricKpa: number): Autonomy {
  const { manifold, bulk, restOfHospitalLpm } = ward.supply
  const drawLpm = wardLpm + (restOfHospitalLpm ?? 0)
  const temperatureC = ward.roomC ?? ROOM_C
  const tank = bulk === undefined ? null : tankHours({ tank: bulk, drawLpm })
  return {
    manifoldHours:
      manifold === undefined
        ? null
        : manifoldHours({ manifold, drawLpm, barometricKpa, temperatureC }),
    tankShortestHours: tank?.shortestHours ?? null,
    tankLongestHours: tank?.longestHours ?? null,
  }
}

function demandRemarks(
  { supply }: WardFile,
  { drawnLpm, designLpm }: { readonly drawnLpm: number; readonly designLpm: number },
): readonly SupplyRemark[] {
  const { source, known } = AREA_RULES[supply.area]
  const { branchLpmMax: limitLpm } = supply
  return [
    supplyRemark(
      'DIVERSITY_FROM_MEMORY',
      {},
      { known, ...(source === undefined ? {} : { source }) },
    ),
    ...(drawnLpm > designLpm
      ? [supplyRemark('DEMAND_ABOVE_FORMULA', { drawnLpm, designLpm })]
      : []),
    ...(limitLpm === undefined ? [supplyRemark('BRANCH_LIMIT_UNKNOWN')] : []),
    ...(limitLpm !== undefined && drawnLpm > limitLpm
      ? [supplyRemark('DEMAND_ABOVE_BRANCH', { drawnLpm, limitLpm })]
      : []),
    ...(supply.manifold === undefined && supply.bulk === undefined
      ? [supplyRemark('AUTONOMY_UNKNOWN')]
      : []),
  ]
}

function oneMoreRemarks(
  { supply }: WardFile,
  of: { readonly drawnLpm: number; readonly withMore: number; readonly designLpm: number },
): readonly SupplyRemark[] {
  const { withMore, designLpm } = of
  const { branchLpmMax: limitLpm } = supply
  return [
    ...(withMore > designLpm
      ? [supplyRemark('ONE_MORE_BREAKS_FORMULA', { drawnLpm: withMore, designLpm })]
      : []),
    ...(limitLpm !== undefined && withMore > limitLpm
      ? [supplyRemark('ONE_MORE_BREAKS_BRANCH', { drawnLpm: withMore, limitLpm })]
      : []),
  ]
}

function outletRemarks({ supply }: WardFile, beds: readonly BedAnswer[]): readonly SupplyRemark[] {
  const used = beds.filter(({ feed }) => feed === 'pipeline')
  const isStated = ({ oxygenOutlets, airOutlets }: Bed): boolean =>
    oxygenOutlets !== undefined && airOutlets !== undefined
  return [
    ...(used.every(({ bed }) => isStated(bed)) ? [] : [supplyRemark('OUTLETS_NOT_STATED')]),
    ...used.flatMap((answer) => shortages(answer, supply.outletLpmMax)),
  ]
}

function shortages(answer: BedAnswer, outletLpmMax: number | undefined): readonly SupplyRemark[] {
  const { bed, pipelineLpm, airLpm } = answer
  const needed = outletsNeeded(answer)
  const { oxygenOutlets, airOutlets } = bed
  return [
    ...(oxygenOutlets !== undefined && oxygenOutlets < needed
      ? [supplyRemark('OUTLETS_SHORT', { bed: bed.bed, needed, has: oxygenOutlets })]
      : []),
    ...(airOutlets !== undefined && airOutlets < 1 && airLpm > 0 && bed.mixerDrive !== 'mains'
      ? [supplyRemark('AIR_OUTLETS_SHORT', { bed: bed.bed, needed: 1, has: airOutlets })]
      : []),
    ...(outletLpmMax !== undefined && pipelineLpm / needed > outletLpmMax
      ? [
          supplyRemark('FLOW_ABOVE_OUTLET', {
            bed: bed.bed,
            drawnLpm: pipelineLpm / needed,
            limitLpm: outletLpmMax,
          }),
        ]
      : []),
  ]
}

/** One for each meter: two meters joined, a mask over a cannula, a jet nebuliser for drugs beside it. */
function outletsNeeded({ setUp, bed }: BedAnswer): number {
  const meters = setUp?.source.kind === 'two-flowmeters' ? 2 : 1
  return meters + (setUp?.over === null ? 0 : 1) + ((bed.beside?.jetLpm ?? 0) > 0 ? 1 : 0)
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
