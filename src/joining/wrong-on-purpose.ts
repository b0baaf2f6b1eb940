// Ten chains miswired on purpose, to practise seeing what is wrong. Parts of the demo shelf. Leaves out the answers in words: each is refused by check-chain.ts.
import type { AirwayState } from '../physiology/airway-state.ts'
import type { Chain } from './chain.ts'
import { branched, demoPart, inLine, joinedOn } from './hand-chain.ts'
import type { HandPart } from './hand-chain.ts'
import { patientPart } from './patient-part.ts'
import type { ChainPatient } from './patient-part.ts'
import type { Part } from './part.ts'

export interface WrongChain {
  readonly id: string
  readonly patient: ChainPatient
  readonly chain: Chain
}

const NATURAL: AirwayState = { route: 'natural', nose: 'open' }
const TUBE: AirwayState = {
  route: 'tracheostomy',
  nose: 'open',
  tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
}
const ADULT: ChainPatient = { ageYears: 60, weightKg: 70, airway: NATURAL }
const WITH_TUBE: ChainPatient = { ...ADULT, airway: TUBE }
const CHILD: ChainPatient = { ageYears: 0.6, weightKg: 7, airway: NATURAL }

const OXYGEN = demoPart('outlet-oxygen')
const AIR = demoPart('outlet-air')
const NIPPLE = demoPart('nipple')
const TUBING = demoPart('tubing-2')
const MASK = demoPart('simple-mask/adult')
const FACE = patientPart('face')
const ON_TUBE = patientPart('conical-15-male')

function meter(flowLpm: number): HandPart {
  return [demoPart('wall-15'), { flowLpm }]
}

function airMeter(flowLpm: number): HandPart {
  return [demoPart('air-15'), { flowLpm }]
}

function ventilator(mode: 'constant-flow' | 'cycles-pressure'): HandPart {
  return [demoPart('ventilator'), { flowLpm: 30, o2Fraction: 0.4, mode }]
}

/** Mixer fed with both gases. */
function mixed(mixer: HandPart, rest: readonly HandPart[]): Chain {
  return joinedOn(inLine([AIR, mixer, ...rest]), [OXYGEN], { to: 1, at: 'inlet', index: 0 })
}

/** The mixer's air comes second: its line joins the second inlet. */
function fed(mixer: HandPart, rest: readonly HandPart[]): Chain {
  const chain = mixed(mixer, rest)
  return {
    ...chain,
    joins: chain.joins.map((join) =>
      join.from === 1 && join.to === 2 ? { ...join, index: 1 } : join,
    ),
  }
}

const VEIN: Part = {
  ...patientPart('needle-free-port'),
  id: 'vein-line',
  kind: 'other-line',
}

export const WRONG_ON_PURPOSE: readonly WrongChain[] = [
  {
    id: 'air-outlet',
    patient: ADULT,
    chain: inLine([AIR, airMeter(6), NIPPLE, TUBING, MASK, FACE]),
  },
  {
    id: 'bubble-before-bag',
    patient: ADULT,
    chain: inLine([
      OXYGEN,
      meter(10),
      demoPart('bubble'),
      TUBING,
      demoPart('non-rebreather/adult'),
      FACE,
    ]),
  },
  {
    id: 'limb-straight-on-tube',
    patient: WITH_TUBE,
    chain: fed(ventilator('constant-flow'), [
      demoPart('filter'),
      demoPart('hose-short'),
      demoPart('heated'),
      demoPart('hose-heated'),
      demoPart('adapter-22-15'),
      ON_TUBE,
    ]),
  },
  {
    id: 'capped-arm',
    patient: ADULT,
    chain: capped(),
  },
  {
    id: 'gases-by-y',
    patient: ADULT,
    chain: joinedOn(
      inLine([OXYGEN, meter(6), NIPPLE, TUBING, demoPart('y-tubing'), TUBING, MASK, FACE]),
      [AIR, airMeter(4), NIPPLE, TUBING],
      { to: 4, at: 'inlet', index: 1 },
    ),
  },
  {
    id: 'one-meter-two-patients',
    patient: ADULT,
    chain: branched(inLine([OXYGEN, meter(10), NIPPLE, TUBING, MASK, FACE]), 2, [
      TUBING,
      MASK,
      FACE,
    ]),
  },
  {
    id: 'exchanger-with-heated',
    patient: WITH_TUBE,
    chain: fed(
      [demoPart('blender-60'), { flowLpm: 30, o2Fraction: 0.4 }],
      [
        demoPart('hose-short'),
        demoPart('heated'),
        demoPart('hose-heated'),
        demoPart('t-piece/adult'),
        demoPart('exchanger'),
        ON_TUBE,
      ],
    ),
  },
  {
    id: 'tubing-on-vein-line',
    patient: ADULT,
    chain: inLine([OXYGEN, meter(4), NIPPLE, TUBING, VEIN]),
  },
  {
    id: 'adult-mask-on-baby',
    patient: CHILD,
    chain: inLine([OXYGEN, meter(6), NIPPLE, TUBING, MASK, FACE]),
  },
  {
    id: 'ventilator-gives-breaths',
    patient: ADULT,
    chain: fed(ventilator('cycles-pressure'), [
      demoPart('filter'),
      demoPart('hose-short'),
      demoPart('heated'),
      demoPart('hose-heated'),
      demoPart('aerosol-mask/adult'),
      FACE,
    ]),
  },
]

/** The side arm of a circuit's Y-piece is closed with a cap, before a mask without ports. */
function capped(): Chain {
  const chain = fed(ventilator('constant-flow'), [
    demoPart('filter'),
    demoPart('hose-22'),
    demoPart('y-circuit'),
    demoPart('cuffed-mask'),
    FACE,
  ])
  const arm = chain.parts.findIndex(({ part }) => part.id === 'y-circuit')
  return joinedOn(chain, [demoPart('cap')], { to: arm, at: 'open-end', index: 0 })
}
