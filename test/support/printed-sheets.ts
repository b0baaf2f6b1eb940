// Sheets of a dozen different set-ups, each for an example case it suits, for the tests that print. Leaves out printing.
import { candidateSetUps } from '../../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import { narrowShelf } from '../../src/kit/narrow-shelf.ts'
import type { Humidification } from '../../src/kit/shelf.ts'
import { readCase } from '../../src/patient/read-case.ts'
import { makePlan, MODEL_VERSION } from '../../src/planning/plan.ts'
import type { SheetRequest } from '../../src/sheet/fragment.ts'
import { makeSheet } from '../../src/sheet/sheet.ts'
import type { Sheet } from '../../src/sheet/sheet.ts'
import { parsedExample } from './examples.ts'

/** Example case, set-up and humidifier; together they have every kind of source, opening and humidifier, and the longest lists of steps. */
const CHOSEN: readonly (readonly [
  example: string,
  setUpId: string,
  humidification?: Humidification,
])[] = [
  ['nasal-cannula', 'nasal-cannula/adult@cylinder-flush#6'],
  ['simple-mask', 'simple-mask/adult@wall-15#6'],
  ['non-rebreather-mask', 'non-rebreather/adult@wall-15#15'],
  ['entrainment-mask', 'entrainment-mask/adult@wall-15#4:0.28', 'collar'],
  ['tracheostomy-mask', 'tracheostomy-mask/adult@nebuliser#10:0.35'],
  ['t-piece-with-limb', 't-piece-with-limb/adult@blender-60#40:0.3'],
  ['t-piece', 't-piece/adult@ventilator#40:0.4'],
  ['head-box', 'head-box/newborn@blender-30#8:0.4'],
  ['nasal-high-flow', 'nasal-high-flow/adult@ventilator#40:0.6'],
  ['preterm', 'nasal-cannula/preterm@wall-200-ml#0.1'],
  ['cannula-under-mask', 'cannula-under-mask/adult@wall-15#6+10'],
  ['tracheostomy-speaking-valve', 'tracheostomy-mask/adult@nebuliser#6:0.28'],
  ['face-tent', 'face-tent/adult@ventilator#40:0.4'],
  ['child-asthma', 'simple-mask/child@wall-15#5', 'bubble'],
  ['nasal-catheter', 'nasal-catheter/infant@wall-1#0.5'],
  ['tracheostomy-uncuffed', 'nasal-cannula/adult@wall-15#4'],
]

export const PRINTED = CHOSEN.map(
  ([example, setUpId, humidification]) => [example, setUpId, humidification] as const,
)

/** With the longest lists of steps. */
export const FULLEST: readonly string[] = [
  't-piece-with-limb/adult@blender-60#40:0.3',
  't-piece/adult@ventilator#40:0.4',
  'tracheostomy-mask/adult@nebuliser#10:0.35',
]

const DRAWS = 64

export function requestFor(
  example: string,
  setUpId: string,
  humidification?: Humidification,
): SheetRequest {
  const read = readCase(parsedExample(example))
  if (!read.ok) throw new Error(`example ${example} is refused`)
  return {
    case: read.case,
    setUpId,
    madeAt: '2026-11-25T13:05',
    readAt: '2026-11-25T13:00',
    modelVersion: MODEL_VERSION,
    ...(setUpId.includes('cylinder')
      ? { cylinder: { waterVolumeL: 2, gaugeKpa: 13_700, leftGaugeKpa: 1400 } }
      : {}),
    ...(humidification === undefined ? {} : { humidification }),
  }
}

export function answerFor(request: SheetRequest): ReturnType<typeof makeSheet> {
  const found = candidateSetUps(DEMO_SHELF).find(({ id }) => id === request.setUpId)
  const shelf = narrowShelf(DEMO_SHELF, found?.setUp ?? null)
  const plan = makePlan({ case: request.case, shelf, draws: DRAWS })
  return makeSheet({ request, plan, shelf: DEMO_SHELF })
}

export function sheetFor(request: SheetRequest): Sheet {
  const answer = answerFor(request)
  if (!answer.ok) throw new Error(`${request.setUpId}: ${JSON.stringify(answer)}`)
  return answer.sheet
}
