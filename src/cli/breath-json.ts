// A delivered breath as JSON (schema/breath.schema.json): bands, the middle breath with its ribbon, texts. Leaves out carbon dioxide of patients at risk, which is not predictable.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import { ribbonText } from '../pictures/breath-ribbon.ts'
import { CO2_NOT_PREDICTABLE, STANDING_CAUTIONS } from '../words/caution-texts.ts'
import { setUpText } from '../words/set-up-text.ts'
import type { BreathAnswer, SetUpAnswer } from './breath-answer.ts'
import { reallyText } from './breath-lines.ts'
import { jsonText } from './json-output.ts'
import { told, toldHead, toldReason, toldRemarks, toldSetUp } from './json-parts.ts'
import type { PlanWords } from './plan-question.ts'
import { ribbonOf } from './ribbon-of.ts'

export const BREATH_JSON_FORMAT = 'oxwright-breath-1'

export function breathJson(options: {
  readonly answer: BreathAnswer
  readonly given: PlanWords
  readonly version: string
}): string {
  const { answer, given } = options
  const { plan } = answer
  return jsonText({
    format: BREATH_JSON_FORMAT,
    ...toldHead(options),
    standingCautions: STANDING_CAUTIONS,
    emergency: plan.emergency.map(told),
    cautions: plan.cautions.map(told),
    reading: { ...plan.reading, remarks: plan.reading.remarks.map(told) },
    barometricPressureKpa: plan.barometricPressureKpa,
    onNow: answer.onNow === null ? null : toldAnswer(answer.onNow, given),
    named: answer.named === null ? null : toldAnswer(answer.named, given),
  })
}

function toldAnswer(one: SetUpAnswer, given: PlanWords): object {
  const isAtRisk = given.case.patient.retentionRisk !== 'none'
  const { bedside, ranked } = one
  return {
    id: one.id,
    text: setUpText(one.setUp, given.shelf),
    setUp: toldSetUp(one.setUp),
    isChecked: bedside.isChecked,
    really: reallyText(one),
    effectiveO2Fraction: ranked?.effectiveO2Fraction ?? null,
    printedO2Fraction: ranked?.printedO2Fraction ?? null,
    saturationPercent: ranked?.saturationPercent ?? null,
    breathToBreath: bedside.breathToBreath,
    blood: ranked?.blood ?? null,
    upperAirwayClearanceMlPerS: bedside.upperAirwayClearanceMlPerS,
    meanAirwayPressureCmH2o: bedside.meanAirwayPressureCmH2o,
    remarks: ranked === null ? [] : toldRemarks(ranked),
    reasons: one.reasons.map(toldReason),
    carbonDioxide: isAtRisk ? CO2_NOT_PREDICTABLE : null,
    breath: isAtRisk ? withoutCarbonDioxide(bedside.breath) : bedside.breath,
    ribbonText: ribbonText(ribbonOf(one)),
  }
}

function withoutCarbonDioxide(breath: DeliveredBreath): object {
  return { ...breath, alveolarCo2Fraction: null }
}
