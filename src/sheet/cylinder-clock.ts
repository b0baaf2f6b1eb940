// When the cylinder at the bed is changed and when it is empty, on the safe side of gauge and meter. Leaves out which cylinder to take.
import type { SetUp } from '../kit/set-up.ts'
import { cylinderAnswer } from '../supply/cylinder-answer.ts'
import { gasDrawn } from '../supply/gas-drawn.ts'
import { FLOWMETER_REFERENCE_TEMPERATURE_C } from '../units/constants.ts'
import type { SheetCylinderInput, SheetRequest } from './fragment.ts'
import { laterBy, wallText, wallTime } from './wall-clock.ts'

export type SheetCylinder =
  /** Volume or gauge was not given. */
  | { readonly kind: 'not-worked-out' }
  | {
      readonly kind: 'worked-out'
      readonly input: SheetCylinderInput
      readonly drawLpm: number
      /** Nothing usable: closed, or at or below the pressure at which it is changed. */
      readonly isUsable: boolean
      readonly changeAt: string
      readonly emptyAt: string
      readonly minutesToChange: number
    }

/** Null where no cylinder feeds the set-up. The gauge is that of the time the sheet was made, at about room temperature. Source: as
 *  cylinderAnswer; the draw is the upper 90 % of what the meter may let through, so that the clock errs to the safe side. */
export function sheetCylinder(question: {
  readonly request: Pick<SheetRequest, 'cylinder' | 'madeAt'>
  readonly setUp: SetUp
  readonly barometricKpa: number
}): SheetCylinder | null {
  const { request, setUp, barometricKpa } = question
  if (setUp.source.kind !== 'cylinder-regulator') return null
  const input = request.cylinder
  if (input === undefined) return { kind: 'not-worked-out' }
  const drawLpm = gasDrawn({ setUp, barometricKpa }).highLpm
  const answer = cylinderAnswer({
    cylinder: {
      waterVolumeL: input.waterVolumeL,
      gaugeKpa: input.gaugeKpa,
      readAtC: FLOWMETER_REFERENCE_TEMPERATURE_C,
      isValveOpen: true,
    },
    use: { barometricKpa, leftGaugeKpa: input.leftGaugeKpa },
    drawLpm,
  })
  const minutesToChange = answer.change?.lowMinutes ?? 0
  const made = wallTime(request.madeAt, 'madeAt')
  return {
    kind: 'worked-out',
    input,
    drawLpm,
    isUsable: answer.toChange.nothing === null,
    changeAt: wallText(laterBy(made, minutesToChange)),
    emptyAt: wallText(laterBy(made, answer.empty?.lowMinutes ?? 0)),
    minutesToChange,
  }
}
