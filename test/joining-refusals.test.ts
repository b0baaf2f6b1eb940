// Refusals of chains put together by hand, one row each: what is forced together, and the code it earns. Leaves out the cases of a whole shelf (joining-cases.test.ts).
import { describe, expect, it } from 'vitest'
import type { Chain } from '../src/joining/chain.ts'
import { checkChain } from '../src/joining/check-chain.ts'
import { branched, demoPart, inLine, joinedOn } from '../src/joining/hand-chain.ts'
import type { HandPart } from '../src/joining/hand-chain.ts'
import type { Part } from '../src/joining/part.ts'
import { patientPart } from '../src/joining/patient-part.ts'
import type { ChainPatient } from '../src/joining/patient-part.ts'
import type { Refusal } from '../src/joining/refusal.ts'
import { solveChains } from '../src/joining/solve-chains.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import type { EndId } from '../src/kit/ends.ts'
import { END_IDS, ENDS } from '../src/kit/ends.ts'

const ADULT: ChainPatient = {
  ageYears: 60,
  weightKg: 70,
  airway: { route: 'natural', nose: 'open' },
}

function tubed(heatMoistureExchanger: boolean): ChainPatient {
  const tube = { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger } as const
  return { ...ADULT, airway: { route: 'tracheostomy', nose: 'open', tube } }
}

const OXYGEN = demoPart('outlet-oxygen')
const AIR_OUTLET = demoPart('outlet-air')
const NIPPLE = demoPart('nipple')
const TUBING = demoPart('tubing-2')
const TO_WIDE = demoPart('adapter-small-22')
const HOSE = demoPart('hose-22')
const SHORT = demoPart('hose-short')
const HEATED = demoPart('heated')
const WARM_HOSE = demoPart('hose-heated')
const MASK = demoPart('simple-mask/adult')
const WIDE_MASK = demoPart('aerosol-mask/adult')
const FACE = patientPart('face')
const BLENDER: HandPart = [demoPart('blender-60'), { flowLpm: 30, o2Fraction: 0.4 }]

function ventilator(flowLpm: number): HandPart {
  return [demoPart('ventilator'), { flowLpm, o2Fraction: 0.4, mode: 'constant-flow' }]
}

function onMeter(flowLpm: number, rest: readonly HandPart[], id = 'wall-15'): Chain {
  return inLine([OXYGEN, [demoPart(id), { flowLpm }], ...rest])
}

/** A mixer with oxygen on its first inlet and, from `second`, gas on its second. */
function onMixer(mixer: HandPart, rest: readonly HandPart[], second: Part = AIR_OUTLET): Chain {
  const chain = inLine([OXYGEN, mixer, ...rest])
  return joinedOn(chain, [second], { to: 1, at: 'inlet', index: 1 })
}

function refusals(chain: Chain, patient: ChainPatient = ADULT): readonly Refusal[] {
  return checkChain({ chain, patient }).refusals
}

interface Case {
  readonly what: string
  readonly codes: readonly Refusal['code'][]
  readonly chain: Chain
  readonly patient?: ChainPatient
}

const WITH_COLLAR = demoPart('entrainment-mask/adult', { hasCollarOn: true })
/** Two outside cones of 22 mm, as on a straight connector. */
const STRAIGHT: Part = { ...demoPart('adapter-22-15'), outlet: 'conical-22-male' }

const ON_FACE = [NIPPLE, TUBING, MASK, FACE]
const Y = demoPart('y-tubing')
const FEED: readonly HandPart[] = [OXYGEN, [demoPart('wall-15'), { flowLpm: 4 }], NIPPLE, TUBING]

/** Two Y-pieces in a row, each with a meter of its own on its second inlet. */
function twoYPieces(): Chain {
  const line = onMeter(4, [NIPPLE, TUBING, Y, TUBING, Y, TUBING, TO_WIDE, HOSE, WIDE_MASK, FACE])
  const first = joinedOn(line, FEED, { to: 4, at: 'inlet', index: 1 })
  return joinedOn(first, FEED, { to: 6 + FEED.length, at: 'inlet', index: 1 })
}

/** The tubing gives back into the nipple that feeds it. */
function circle(): Chain {
  const { parts, joins } = onMeter(6, ON_FACE)
  return { parts, joins: [...joins, { from: 3, to: 2, at: 'inlet', index: 0 }] }
}

const CASES: readonly Case[] = [
  {
    what: 'a humidifier above the flow on its label',
    codes: ['FLOW_ABOVE_RATED'],
    chain: onMeter(15, [demoPart('bubble'), TUBING, TO_WIDE, HOSE, WIDE_MASK, FACE]),
  },
  {
    what: 'tubing above the flow on its label',
    codes: ['TUBE_ABOVE_ITS_LABEL'],
    chain: onMeter(8, [NIPPLE, { ...TUBING, flow: { maxLpm: 6, isFromLabel: true } }, MASK, FACE]),
  },
  {
    what: 'dry gas to a tracheostomy',
    codes: ['DRY_GAS_TO_NECK'],
    chain: onMeter(10, [
      NIPPLE,
      TUBING,
      TO_WIDE,
      HOSE,
      demoPart('tracheostomy-mask/adult'),
      patientPart('neck'),
    ]),
    patient: tubed(false),
  },
  {
    what: 'a dry blend to a tracheostomy, told once though two gases feed it',
    codes: ['DRY_GAS_TO_NECK'],
    chain: onMixer(BLENDER, [HOSE, demoPart('tracheostomy-mask/adult'), patientPart('neck')]),
    patient: tubed(false),
  },
  {
    what: 'a heated humidifier for a patient who wears an exchanger',
    codes: ['EXCHANGER_WORN_WITH_HUMIDIFIER'],
    chain: onMixer(BLENDER, [
      SHORT,
      HEATED,
      WARM_HOSE,
      demoPart('tracheostomy-mask/adult'),
      patientPart('neck'),
    ]),
    patient: tubed(true),
  },
  {
    what: 'a cuffed mask straight on a constant-flow limb, by a straight connector',
    codes: ['CLOSED_CIRCUIT'],
    chain: onMixer(ventilator(30), [
      demoPart('filter'),
      HOSE,
      STRAIGHT,
      demoPart('cuffed-mask'),
      FACE,
    ]),
  },
  {
    what: 'a cuffed mask forced on the limb itself',
    codes: ['ENDS_DO_NOT_MATE', 'CLOSED_CIRCUIT'],
    chain: onMixer(ventilator(30), [demoPart('filter'), HOSE, demoPart('cuffed-mask'), FACE]),
  },
  {
    // 2.1 m of 4.8 mm at 40 L/min of 40 %: v 36.8 m/s, Re 11 600, f 0.0305, ½ρv² 850 Pa: about 11 kPa, of 6 the ventilator pushes.
    what: 'more pressure than a ventilator pushes',
    codes: ['SOURCE_CANNOT_PUSH'],
    chain: onMixer(ventilator(40), [
      demoPart('filter'),
      SHORT,
      demoPart('limb-to-tubing'),
      TUBING,
      TO_WIDE,
      HOSE,
      WIDE_MASK,
      FACE,
    ]),
  },
  {
    what: 'half a metre of tube from the wall',
    codes: ['DOES_NOT_REACH'],
    chain: onMeter(6, [
      NIPPLE,
      {
        ...TUBING,
        tube: { lengthM: 0.5, boreMm: 4.8, isHeated: false, hasWaterTrap: false },
      },
      MASK,
      FACE,
    ]),
  },
  {
    what: 'a collar driven by oxygen',
    codes: ['COLLAR_FED_WITH_OXYGEN'],
    chain: joinedOn(
      onMeter(4, [NIPPLE, TUBING, [WITH_COLLAR, { o2Fraction: 0.28 }], FACE]),
      [
        OXYGEN,
        [demoPart('wall-15'), { flowLpm: 8 }],
        NIPPLE,
        TUBING,
        TO_WIDE,
        HOSE,
        demoPart('collar'),
      ],
      { to: 4, at: 'inlet', index: 1 },
    ),
  },
  {
    what: 'oxygen at the air inlet of a blender',
    codes: ['WRONG_GAS_AT_MIXER'],
    chain: onMixer(BLENDER, [HOSE, WIDE_MASK, FACE], { ...AIR_OUTLET, gas: 'oxygen' }),
  },
  {
    what: 'a filter behind a heated humidifier',
    codes: ['FILTER_GETS_WET'],
    chain: onMixer(BLENDER, [SHORT, HEATED, demoPart('filter'), WARM_HOSE, WIDE_MASK, FACE]),
  },
  {
    what: 'high-flow prongs without heated humidifier',
    codes: ['HIGH_FLOW_WITHOUT_HEATED'],
    chain: onMixer(BLENDER, [HOSE, demoPart('nasal-high-flow/adult'), patientPart('nose')]),
  },
  {
    what: 'two humidifiers in a row',
    codes: ['TWO_HUMIDIFIERS'],
    chain: onMixer(BLENDER, [SHORT, HEATED, SHORT, HEATED, WARM_HOSE, WIDE_MASK, FACE]),
  },
  {
    what: 'an open fitting with a hose between it and the patient',
    codes: ['OPEN_BEFORE_PATIENT'],
    chain: onMixer(BLENDER, [SHORT, demoPart('open-t'), HOSE, WIDE_MASK, FACE]),
  },
  {
    what: 'a meter above what the jet may be driven with',
    codes: ['DRIVE_ABOVE_JET'],
    chain: onMeter(
      20,
      [[demoPart('nebuliser'), { o2Fraction: 0.6 }], HOSE, WIDE_MASK, FACE],
      'wall-30',
    ),
  },
  {
    what: 'a Y-piece with one inlet that nothing feeds',
    codes: ['INLET_NOT_FED'],
    chain: onMeter(6, [NIPPLE, TUBING, Y, TUBING, MASK, FACE]),
  },
  {
    what: 'two tubings on the one inlet of a mask',
    codes: ['INLET_FED_TWICE'],
    chain: joinedOn(onMeter(6, ON_FACE), FEED, { to: 4, at: 'inlet', index: 0 }),
  },
  {
    what: 'a mask that nobody wears',
    codes: ['OUTLET_LEADS_NOWHERE', 'NO_PATIENT'],
    chain: onMeter(6, [NIPPLE, TUBING, MASK]),
  },
  {
    what: 'a nipple with two tubings, one of them to nobody',
    codes: ['OUTLET_SPLIT', 'OUTLET_LEADS_NOWHERE'],
    chain: branched(onMeter(6, ON_FACE), 2, [TUBING]),
  },
  {
    what: 'a patient whom nothing reaches',
    codes: ['INLET_NOT_FED', 'NO_GAS_OUTLET', 'CLOSED_CIRCUIT'],
    chain: inLine([FACE]),
  },
  {
    what: 'tubing that gives back into its own nipple',
    codes: ['GOES_IN_A_CIRCLE', 'INLET_FED_TWICE', 'OUTLET_SPLIT'],
    chain: circle(),
  },
  {
    what: 'an outlet of a gas that is not for breathing oxygen',
    codes: ['GAS_NOT_FOR_PATIENT'],
    chain: inLine([
      { ...OXYGEN, gas: 'carbon-dioxide' },
      [demoPart('wall-15'), { flowLpm: 6 }],
      ...ON_FACE,
    ]),
  },
  {
    what: 'a flow that is no mark of the meter',
    codes: ['FLOW_NOT_ON_METER'],
    chain: onMeter(6.3, ON_FACE),
  },
  {
    what: 'a fraction that the dial of a jet has not',
    codes: ['FRACTION_NOT_ON_SCALE'],
    chain: onMeter(10, [[demoPart('nebuliser'), { o2Fraction: 0.33 }], HOSE, WIDE_MASK, FACE]),
  },
  {
    what: 'a mask below the flow on its label',
    codes: ['FLOW_BELOW_RATED'],
    chain: onMeter(4, [NIPPLE, TUBING, { ...MASK, flow: { minLpm: 5, isFromLabel: true } }, FACE]),
  },
  {
    what: 'two Y-pieces in a row',
    codes: ['TWO_Y_PIECES'],
    chain: twoYPieces(),
  },
]

describe('is refused with the reason', () => {
  it.each(CASES)('$what', ({ codes, chain, patient }) => {
    expect(refusals(chain, patient).map(({ code }) => code)).toEqual(codes)
  })

  it('a mask whose end nothing on the shelf takes', () => {
    const shelf = {
      ...DEMO_SHELF,
      interfaces: DEMO_SHELF.interfaces.map((row) =>
        row.id === 'simple-mask' ? { ...row, inletEnds: ['luer-male'] as const } : row,
      ),
    }
    const wanted = {
      interfaceId: 'simple-mask',
      size: 'adult',
      sourceId: 'wall-15',
      humidification: 'none',
      flowLpm: 6,
    } as const
    expect(solveChains({ shelf, wardId: 'plover', wanted, patient: ADULT })).toEqual({
      kind: 'refused',
      refusals: [{ code: 'ENDS_MEET_NOWHERE', values: {} }],
      nearest: null,
    })
  })
})

const FORBIDDEN: readonly EndId[] = [
  'luer-male',
  'luer-female',
  'needle-free-port',
  'enteral-male',
  'enteral-female',
  'neuraxial-female',
  'limb-cuff-line',
  'tube-cuff-line',
]

describe('oxygen tubing on a line that is not for gas', () => {
  it.each(FORBIDDEN)('%s is refused whichever end it takes', (end) => {
    const line: Part = { ...patientPart(end), id: 'line', kind: 'other-line' }
    const fault = { code: 'NEVER_FOR_GAS', values: { from: 'funnel', to: end } }
    expect(refusals(onMeter(4, [NIPPLE, TUBING, line]))).toContainEqual(
      expect.objectContaining(fault),
    )
    const forced: Part = { ...NIPPLE, outlet: end }
    const turned = { code: 'NEVER_FOR_GAS', values: { from: end, to: 'funnel' } }
    expect(refusals(onMeter(4, [forced, TUBING, MASK, FACE]))).toEqual([
      expect.objectContaining(turned),
    ])
  })

  it('misses none of them', () => {
    const named = END_IDS.filter((end) =>
      /luer|needle|enteral|neuraxial|cuff/.test(ENDS[end].connector),
    )
    expect(named).toEqual(FORBIDDEN)
  })
})
