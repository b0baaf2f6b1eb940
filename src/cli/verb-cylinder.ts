// `oxwright cylinder`: how long one cylinder lasts for what is really drawn. Leaves out stores and ways.
import { requireWithin } from '../errors.ts'
import { barometricPressureKpa } from '../physics/atmosphere.ts'
import { siteKpa } from './site-pressure.ts'
import { setUpOfOnNow } from '../planning/on-now.ts'
import { cylinderAnswer, type CylinderQuestion } from '../supply/cylinder-answer.ts'
import { clockAfter } from '../supply/duration.ts'
import { gasDrawn, type BesideFlows, type GasDrawn } from '../supply/gas-drawn.ts'
import { kpaFromBar } from '../units/pressure.ts'
import type { GasUnits } from '../words/supply-value.ts'
import { supplyText } from '../words/supply-text.ts'
import { oneOf, type ParsedWords } from './arguments.ts'
import { cylinderLines } from './cylinder-lines.ts'
import { EXIT } from './exit-codes.ts'
import { UsageError } from './failure.ts'
import { jsonText } from './json-output.ts'
import { decimal, needed, pressureKpa, timeOfDay, type TimeOfDay } from './quantities.ts'
import { caseFrom, shelfFrom } from './read-input.ts'
import { COMMON_OPTIONS, type Verb } from './verb.ts'

export const CYLINDER_JSON_FORMAT = 'oxwright-cylinder-1'

/** Left in it where nothing is typed: 14 bar, which is 200 psi (common practice). */
export const LEFT_KPA = kpaFromBar(14)
const READ_AT_C = 20
const BESIDE_LPM_MAX = 100

export const GAS_UNIT_OPTIONS = { units: 'text', volume: 'text' } as const

export function gasUnitsOf(words: ParsedWords): GasUnits {
  const volume = oneOf(words, 'volume', ['L', 'ft3']) ?? 'L'
  return {
    pressure: oneOf(words, 'units', ['bar', 'psi', 'kPa']) ?? 'bar',
    volume: volume === 'ft3' ? 'ft³' : 'L',
  }
}

export interface CylinderGiven {
  readonly question: CylinderQuestion
  readonly drawn: GasDrawn | null
  readonly now: TimeOfDay
  readonly units: GasUnits
}

export const cylinderVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    ...GAS_UNIT_OPTIONS,
    water: 'text',
    gauge: 'text',
    flow: 'text',
    case: 'text',
    shelf: 'text',
    left: 'text',
    minimum: 'text',
    'gauge-error': 'text',
    'read-at': 'text',
    'used-at': 'text',
    altitude: 'text',
    bias: 'text',
    jet: 'text',
    leak: 'text',
    closed: 'switch',
    now: 'text',
  },
  takesCase: false,
  run: ({ words, terminal, version }) => {
    const given = givenOf(words)
    const answer = cylinderAnswer(given.question)
    const remarks = [...answer.remarks, ...(given.drawn?.remarks ?? [])]
    const toldRemarks = remarks.map((remark) => ({
      ...remark,
      text: supplyText(remark, given.units),
    }))
    if (words.switches.has('json'))
      terminal.out(
        jsonText({
          format: CYLINDER_JSON_FORMAT,
          version,
          question: given.question,
          drawn: given.drawn === null ? null : { ...given.drawn, remarks: undefined },
          now: given.now,
          answer: { ...answer, remarks: toldRemarks },
          clock: {
            changeAt:
              answer.change === null ? null : clockAfter(given.now, answer.change.middleMinutes),
            emptyAt:
              answer.empty === null ? null : clockAfter(given.now, answer.empty.middleMinutes),
          },
        }),
      )
    else terminal.out(cylinderLines({ given, answer, remarks }).join('\n'))
    return EXIT.ok
  },
}

function givenOf(words: ParsedWords): CylinderGiven {
  const verb = 'cylinder'
  const waterVolumeL = needed(decimal(words, 'water'), { option: '--water', verb })
  const gaugeKpa = needed(pressureKpa(words, 'gauge'), { option: '--gauge', verb })
  const usedAtC = decimal(words, 'used-at')
  const draw = drawOf(words)
  return {
    question: {
      cylinder: {
        waterVolumeL,
        gaugeKpa,
        readAtC: decimal(words, 'read-at') ?? READ_AT_C,
        isValveOpen: !words.switches.has('closed'),
      },
      use: {
        barometricKpa: draw.barometricKpa,
        leftGaugeKpa: pressureKpa(words, 'left') ?? LEFT_KPA,
        regulatorMinimumGaugeKpa: pressureKpa(words, 'minimum') ?? 0,
        gaugeErrorKpa: pressureKpa(words, 'gauge-error') ?? 0,
        ...(usedAtC === undefined ? {} : { usedAtC }),
      },
      drawLpm: draw.drawLpm,
      ...(draw.drawn === null
        ? {}
        : { drawLowLpm: draw.drawn.lowLpm, drawHighLpm: draw.drawn.highLpm }),
    },
    drawn: draw.drawn,
    now: timeOfDay(words, 'now'),
    units: gasUnitsOf(words),
  }
}

interface Draw {
  readonly drawLpm: number
  readonly drawn: GasDrawn | null
  readonly barometricKpa: number
}

/** Flow as typed with what runs beside it, or what the set-up on now of a case draws. */
function drawOf(words: ParsedWords): Draw {
  const flowLpm = decimal(words, 'flow')
  const casePath = words.texts.get('case')
  const altitudeM = decimal(words, 'altitude')
  if ((flowLpm === undefined) === (casePath === undefined))
    throw new UsageError({ kind: 'one-of-two', options: ['--flow', '--case'] })
  const beside = besideOf(words)
  const barometric = (otherwise: number): number =>
    altitudeM === undefined ? otherwise : barometricPressureKpa(altitudeM)
  if (flowLpm !== undefined) {
    const drawLpm = flowLpm + besideLpm(beside)
    return { drawLpm, drawn: null, barometricKpa: barometric(barometricPressureKpa(0)) }
  }
  const { case: patientCase } = caseFrom(casePath ?? '')
  const { onNow, patient, site } = patientCase
  if (onNow === undefined) throw new UsageError({ kind: 'nothing-on-now' })
  const barometricKpa = barometric(siteKpa(site))
  if (onNow.setUp === null) return { drawLpm: 0, drawn: null, barometricKpa }
  const setUp = setUpOfOnNow(onNow.setUp, shelfFrom(words.texts.get('shelf')), patient)
  const drawn = gasDrawn({ setUp, barometricKpa, beside })
  return { drawLpm: drawn.oxygenLpm, drawn, barometricKpa }
}

function besideOf(words: ParsedWords): BesideFlows {
  const biasFlowLpm = decimal(words, 'bias')
  const jetLpm = decimal(words, 'jet')
  const leakLpm = decimal(words, 'leak')
  return {
    ...(biasFlowLpm === undefined ? {} : { biasFlowLpm }),
    ...(jetLpm === undefined ? {} : { jetLpm }),
    ...(leakLpm === undefined ? {} : { leakLpm }),
  }
}

/** Beside a flow typed as oxygen, each counts as oxygen; none may be negative, which would hide a draw. */
function besideLpm(beside: BesideFlows): number {
  return Object.entries(beside).reduce((sum, [path, value]) => {
    const bounds = { path, value, min: 0, max: BESIDE_LPM_MAX, unit: 'L/min' }
    return sum + requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
  }, 0)
}
