// Everything to be said of one cylinder in use: contents, minutes to change and to empty, handbooks beside, remarks by code. Leaves out how it is shown.
import { requireWithin } from '../errors.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import { oxygenContentsLitres, oxygenPressureAtKpa } from '../physics/real-gas-oxygen.ts'
import { usableContents, type Cylinder, type CylinderUse, type UsableContents } from './cylinder.ts'
import { handbookBeside, waterVolumeMinutes, type HandbookBeside } from './handbook.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

export interface CylinderQuestion {
  readonly cylinder: Cylinder
  /** `leftGaugeKpa` is the reserve at which it is changed. */
  readonly use: CylinderUse
  readonly drawLpm: number
  /** The draw where it is not known exactly; as drawn where absent. */
  readonly drawLowLpm?: number
  readonly drawHighLpm?: number
}

/** The middle, and the ends with gauge and flow wrong on the unsafe and on the safe side. */
export interface MinutesSpan {
  readonly lowMinutes: number
  readonly middleMinutes: number
  readonly highMinutes: number
}

export interface CylinderAnswer {
  /** All gas in it, what cannot leave included; litres at 15 °C as printed on cylinders. */
  readonly contentsL: number
  readonly toChange: UsableContents
  readonly toEmpty: UsableContents
  /** Null: nothing is drawn. A closed valve gives 0. */
  readonly change: MinutesSpan | null
  readonly empty: MinutesSpan | null
  /** What the gauge will show of the same filling at the temperature of use; null beyond what the gas law covers. */
  readonly gaugeAtUseKpa: number
  readonly handbooks: readonly (HandbookBeside & { readonly differenceShare: number })[]
  /** Water volume × bar; null where nothing is drawn. */
  readonly ruleOfThumbMinutes: number | null
  readonly remarks: readonly SupplyRemark[]
}

const DRAW_LPM_MAX = 300

/** Contents and times of one cylinder. Valid as usableContents, draws 0–300 L/min, else DomainError. [Stewart1991]. Worked examples in cylinder.test.ts. */
export function cylinderAnswer(question: CylinderQuestion): CylinderAnswer {
  const { cylinder, use } = question
  const draws = drawsOf(question)
  const toChange = usableContents(cylinder, use)
  const toEmpty = usableContents(cylinder, { ...use, leftGaugeKpa: 0 })
  const usedAtC = use.usedAtC ?? cylinder.readAtC
  const pressureKpa = cylinder.gaugeKpa + requireBarometricKpa(use.barometricKpa)
  const filling = { temperatureC: cylinder.readAtC, pressureKpa }
  const change = spanOf(toChange, draws)
  const handbooks =
    change === null || toChange.nothing !== null ? [] : besideOf(question, change.middleMinutes)
  const answer = {
    contentsL: cylinder.waterVolumeL * oxygenContentsLitres(filling),
    toChange,
    toEmpty,
    change,
    empty: spanOf(toEmpty, draws),
    gaugeAtUseKpa: oxygenPressureAtKpa({ ...filling, atC: usedAtC }) - use.barometricKpa,
    handbooks,
    ruleOfThumbMinutes: change === null ? null : waterVolumeMinutes(rule(question)),
  }
  return { ...answer, remarks: remarksOf(question, answer) }
}

interface Draws {
  readonly low: number
  readonly middle: number
  readonly high: number
}

function drawsOf({ drawLpm, drawLowLpm, drawHighLpm }: CylinderQuestion): Draws {
  return {
    low: checkedDraw('drawLowLpm', drawLowLpm ?? drawLpm),
    middle: checkedDraw('drawLpm', drawLpm),
    high: checkedDraw('drawHighLpm', drawHighLpm ?? drawLpm),
  }
}

function checkedDraw(path: string, value: number): number {
  const bounds = { path, value, min: 0, max: DRAW_LPM_MAX, unit: 'L/min' }
  return requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
}

/** The most that can flow out divided by the least that is drawn, and the other way round. A draw whose low end is 0 may last for ever:
 *  then the middle stands for the high end, as no number would be true. */
function spanOf(usable: UsableContents, draws: Draws): MinutesSpan | null {
  if (draws.middle === 0) return null
  const middleMinutes = usable.usableL / draws.middle
  return {
    lowMinutes: usable.usableLowL / draws.high,
    middleMinutes,
    highMinutes: draws.low === 0 ? middleMinutes : usable.usableHighL / draws.low,
  }
}

function rule({ cylinder, use, drawLpm }: CylinderQuestion) {
  const { waterVolumeL, gaugeKpa } = cylinder
  return { waterVolumeL, gaugeKpa, leftGaugeKpa: use.leftGaugeKpa, drawLpm }
}

function besideOf(question: CylinderQuestion, ourMinutes: number) {
  return handbookBeside(rule(question)).map((one) => ({
    ...one,
    differenceShare: one.minutes / ourMinutes - 1,
  }))
}

function remarksOf(
  { cylinder, use, drawLpm }: CylinderQuestion,
  answer: Omit<CylinderAnswer, 'remarks'>,
): readonly SupplyRemark[] {
  const usedAtC = use.usedAtC ?? cylinder.readAtC
  const { toChange, gaugeAtUseKpa } = answer
  const when = (holds: boolean, remark: SupplyRemark): readonly SupplyRemark[] =>
    holds ? [remark] : []
  const { gaugeKpa } = cylinder
  return [
    ...when(toChange.nothing === 'VALVE_CLOSED', supplyRemark('OPEN_THE_VALVE')),
    ...when(
      toChange.nothing === 'AT_OR_BELOW_FLOOR',
      supplyRemark('AT_OR_BELOW_FLOOR', { gaugeKpa, leftGaugeKpa: use.leftGaugeKpa }),
    ),
    ...when(drawLpm === 0, supplyRemark('NOTHING_DRAWN')),
    ...when(
      toChange.equation === 'extrapolated',
      supplyRemark('EQUATION_EXTRAPOLATED', { temperatureC: Math.max(usedAtC, cylinder.readAtC) }),
    ),
    ...when(
      usedAtC < cylinder.readAtC,
      supplyRemark('FILLED_WARM_USED_COLD', { readAtC: cylinder.readAtC, usedAtC, gaugeAtUseKpa }),
    ),
    ...when(
      (use.gaugeErrorKpa ?? 0) > 0,
      supplyRemark('GAUGE_MAY_READ_HIGH', { gaugeErrorKpa: use.gaugeErrorKpa ?? 0 }),
    ),
    ...answer.handbooks.map(({ row, minutes, differenceShare }) =>
      supplyRemark(
        'HANDBOOK_DIFFERS',
        { country: row.country, letter: row.letter, minutes, differenceShare },
        { known: row.known },
      ),
    ),
    ...when(
      answer.change !== null && toChange.nothing === null && answer.handbooks.length === 0,
      supplyRemark('HANDBOOK_HAS_NO_SUCH_SIZE'),
    ),
  ]
}
