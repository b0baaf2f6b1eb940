// Where the water that reaches the airway rests on something no measurement judges, so that no verdict may be given. Leaves out the words.
import type { ParameterId } from './parameters.ts'

export type NotMeasuredCode =
  | 'NEBULISER_NOT_MEASURED'
  | 'PASS_OVER_NOT_MEASURED'
  | 'COLLAR_NOT_MEASURED'
  | 'EXCHANGER_BESIDE_NOT_MEASURED'

/** What gives the water and is known from memory or assumed alone; heat lost on the way only widens a band. */
const UNJUDGED: Readonly<Partial<Record<ParameterId, NotMeasuredCode>>> = {
  nebuliserColdMgPerL: 'NEBULISER_NOT_MEASURED',
  nebuliserHeatedMgPerL: 'NEBULISER_NOT_MEASURED',
  passOverSaturation: 'PASS_OVER_NOT_MEASURED',
  collarSaturation: 'COLLAR_NOT_MEASURED',
  exchangerReturnShare: 'EXCHANGER_BESIDE_NOT_MEASURED',
}

/** Each once; empty where every source of water was measured or is on a label. */
export function notMeasuredIn(used: readonly ParameterId[]): readonly NotMeasuredCode[] {
  const codes = used.map((one) => UNJUDGED[one]).filter((code) => code !== undefined)
  return [...new Set(codes)]
}
