// The case behind "what is on really": the patient of the form where there is one, else an average adult, with what was entered. Leaves out computing.
import type { Case } from '../../patient/case.ts'
import { readCase } from '../../patient/read-case.ts'
import type { ReadCase } from '../../patient/read-case.ts'
import { writeCase } from '../../patient/write-case.ts'
import { NUMBERS } from '../../patient/case-fields.ts'
import { typedNumber } from '../case/typed-number.ts'
import type { Wearable } from './wearables.ts'

/** Common practice: a resting adult of forty; all that is not given carries its spread. */
const AVERAGE_ADULT = {
  version: 1,
  patient: {
    ageYears: 40,
    airway: { route: 'natural', nose: 'open' },
    retentionRisk: 'none',
    changes: [],
  },
  breathing: { state: 'rest' },
  goal: { kind: 'comfort' },
} as const

export interface Entered {
  readonly worn: Wearable
  readonly flowTyped: string
  /** Asked only where a mask over it has a flow of its own. */
  readonly overFlowTyped: string
  readonly rateTyped: string
}

/** Read like any other case: what cannot be is refused at its field. */
export function reallyCase(about: Case | null, entered: Entered): ReadCase {
  const { worn } = entered
  // Safe: a written case is a plain object; its parts are spread and judged again by the reader.
  const base = (about === null ? AVERAGE_ADULT : writeCase(about)) as Record<string, object>
  return readCase({
    ...base,
    breathing: { ...base['breathing'], ratePerMin: valueOf(entered.rateTyped, 'ratePerMin') },
    onNow: {
      setUp: {
        family: worn.family,
        sourceKind: worn.sourceKind,
        flowLpm: valueOf(entered.flowTyped, 'flowLpm'),
        ...(worn.setO2Fraction === null ? {} : { setO2Fraction: worn.setO2Fraction }),
        ...(worn.overFamily === null
          ? {}
          : {
              over: {
                family: worn.overFamily,
                flowLpm: valueOf(entered.overFlowTyped, 'flowLpm'),
              },
            }),
      },
    },
  })
}

/** A number that reads as one, else the text as typed, for the reader to refuse. */
function valueOf(typed: string, name: 'flowLpm' | 'ratePerMin'): number | string {
  const read = typedNumber(typed, NUMBERS[name])
  return read.kind === 'number' ? read.value : typed
}
