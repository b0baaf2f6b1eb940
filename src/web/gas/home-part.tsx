// Concentrator and liquid oxygen: purity carried through to what is inhaled, and how long a vessel lasts. Leaves out pulse settings, which are never converted.
import {
  concentratorPurity,
  fractionWithPurity,
  pulseSettingAsFlow,
} from '../../supply/home-concentrator.ts'
import type { ConcentratorAnswer } from '../../supply/home-concentrator.ts'
import { liquidAnswer } from '../../supply/liquid-oxygen.ts'
import type { LiquidAnswer } from '../../supply/liquid-oxygen.ts'
import { AIR_O2_FRACTION } from '../../units/constants.ts'
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../../physics/atmosphere.ts'
import { machineBasisLines, vesselBasisLines } from '../../words/gas-assumptions.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import {
  daysText,
  HOME_TEXT,
  inhaledText,
  lastsText,
  purityText,
} from '../../words/gas-home-text.ts'
import { supplyText, supplyTexts } from '../../words/supply-text.ts'
import { gasVolumeText } from '../../words/supply-value.ts'
import { Facts } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { GasChoice, GasNumber } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { GasRefused } from './gas-refused.tsx'
import { useKeptForm } from './kept-form.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { formReader, readAll } from './read-form.ts'
import type { ReadForm } from './read-form.ts'
import { useGasUnits } from './use-gas-units.ts'

const MINUTES = { min: 0, max: 1440, unit: 'min' } as const
const ALTITUDE = { min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX, unit: 'm' } as const
const PER_CENT = 100

const RULES = {
  ratedFlowLpm: { min: 0.1, max: 20, unit: 'L/min' },
  useLpm: { min: 0, max: 20, unit: 'L/min' },
  purityPercent: { min: PER_CENT * AIR_O2_FRACTION, max: PER_CENT, unit: '%' },
  pureFraction: { min: AIR_O2_FRACTION, max: 1 },
  minutesOn: MINUTES,
  warmUpMinutes: MINUTES,
  altitudeM: ALTITUDE,
  ratedAltitudeM: ALTITUDE,
  liquidL: { min: 0, max: 1_000_000, unit: 'L' },
  liquidDrawLpm: { min: 0, max: 60, unit: 'L/min' },
  evaporationLPerDay: { min: 0, max: 1000, unit: 'L/d' },
} as const

const MACHINE = ['ratedFlowLpm', 'useLpm', 'purityPercent', 'pureFraction'] as const
const MACHINE_MORE = ['minutesOn', 'warmUpMinutes', 'altitudeM', 'ratedAltitudeM'] as const
const VESSEL = ['liquidL', 'liquidDrawLpm', 'evaporationLPerDay'] as const

/** Invented. */
const START: KeptForm = {
  texts: {
    example: 'yes',
    setting: 'flow',
    ratedFlowLpm: '5',
    useLpm: '3',
    pureFraction: '0.32',
    liquidL: '30',
    liquidDrawLpm: '2',
  },
  rows: [],
}

export function HomePart() {
  const { form, change } = useKeptForm('home', START)
  const machine = readMachine(form.texts)
  const vessel = readVessel(form.texts)
  const problems = [machine, vessel].flatMap((read) => (read.ok ? [] : read.problems))
  const fields: GasForm = {
    prefix: 'home',
    texts: form.texts,
    problems,
    type: (name, text) => {
      const { example: _, ...own } = form.texts
      change({ ...form, texts: { ...own, [name]: text } })
    },
  }
  const isExample = form.texts['example'] !== undefined
  return (
    <>
      <p className="section-help">{HOME_TEXT.help()}</p>
      {isExample ? <p className="badge-line">{GAS_TEXT.example()}</p> : null}
      <section className="gas-card" aria-labelledby="home-machine">
        <div className="gas-result">
          <h2 id="home-machine">{HOME_TEXT.concentrator()}</h2>
          {machine.ok ? (
            <MachineResult {...machine.value} />
          ) : (
            <GasRefused problems={machine.problems} />
          )}
        </div>
        <div className="gas-form">
          <GasChoice form={fields} name="setting" choices={settingChoices()} />
          <Numbers form={fields} names={MACHINE} />
          <Fold heading={HOME_TEXT.moreMachine()}>
            <Numbers form={fields} names={MACHINE_MORE} />
          </Fold>
        </div>
      </section>
      <section className="gas-card" aria-labelledby="home-liquid">
        <div className="gas-result">
          <h2 id="home-liquid">{HOME_TEXT.liquid()}</h2>
          {vessel.ok ? (
            <VesselResult answer={vessel.value} />
          ) : (
            <GasRefused problems={vessel.problems} />
          )}
        </div>
        <div className="gas-form">
          <Numbers form={fields} names={VESSEL} />
        </div>
      </section>
    </>
  )
}

function settingChoices() {
  return [
    { value: 'flow', text: HOME_TEXT.flow() },
    { value: 'pulse', text: HOME_TEXT.pulse() },
  ]
}

function Numbers(props: {
  readonly form: GasForm
  readonly names: readonly (keyof typeof RULES)[]
}) {
  return (
    <div className="pair">
      {props.names.map((name) => (
        <GasNumber key={name} form={props.form} name={name} unit={unitOf(name)} />
      ))}
    </div>
  )
}

function unitOf(name: keyof typeof RULES): string | undefined {
  const rule = RULES[name]
  return 'unit' in rule ? rule.unit : undefined
}

type Machine =
  | { readonly isPulse: true }
  | {
      readonly isPulse: false
      readonly answer: ConcentratorAnswer
      readonly isPurityTyped: boolean
      readonly inhaled: { readonly pure: number; readonly real: number } | null
    }

function readMachine(texts: Texts): ReadForm<Machine> {
  if (texts['setting'] === 'pulse') return { ok: true, value: { isPulse: true } }
  const reader = formReader(texts, 'home')
  const ratedFlowLpm = reader.number('ratedFlowLpm', RULES.ratedFlowLpm)
  const flowLpm = reader.number('useLpm', RULES.useLpm)
  const purityPercent = reader.optional('purityPercent', RULES.purityPercent)
  const pure = reader.optional('pureFraction', RULES.pureFraction)
  const minutesOn = reader.optional('minutesOn', MINUTES)
  const warmUpMinutes = reader.optional('warmUpMinutes', MINUTES)
  const altitudeM = reader.optional('altitudeM', ALTITUDE)
  const ratedAltitudeM = reader.optional('ratedAltitudeM', ALTITUDE)
  return readAll(reader, () => {
    const answer = concentratorPurity(
      {
        ratedFlowLpm,
        ...(purityPercent === undefined
          ? {}
          : { purityTable: [{ flowLpm, o2Fraction: purityPercent / PER_CENT }] }),
        ...(warmUpMinutes === undefined ? {} : { warmUpMinutes }),
        ...(ratedAltitudeM === undefined ? {} : { ratedAltitudeM }),
      },
      {
        flowLpm,
        ...(minutesOn === undefined ? {} : { minutesOn }),
        ...(altitudeM === undefined ? {} : { altitudeM }),
      },
    )
    const { o2Fraction } = answer
    const inhaled =
      pure === undefined || o2Fraction === null
        ? null
        : { pure, real: fractionWithPurity({ fractionWithPureOxygen: pure, purity: o2Fraction }) }
    return { isPulse: false, answer, isPurityTyped: purityPercent !== undefined, inhaled } as const
  })
}

function readVessel(texts: Texts): ReadForm<LiquidAnswer> {
  const reader = formReader(texts, 'home')
  const liquidL = reader.number('liquidL', RULES.liquidL)
  const drawLpm = reader.number('liquidDrawLpm', RULES.liquidDrawLpm)
  const evaporationLPerDay = reader.optional('evaporationLPerDay', RULES.evaporationLPerDay)
  return readAll(reader, () =>
    liquidAnswer(
      { liquidL, ...(evaporationLPerDay === undefined ? {} : { evaporationLPerDay }) },
      drawLpm,
    ),
  )
}

function MachineResult(machine: Machine) {
  const units = useGasUnits()
  if (machine.isPulse)
    return (
      <div className="answer">
        <p className="answer-name">{HOME_TEXT.pulseHead()}</p>
        <p>{supplyText(pulseSettingAsFlow().remark, units)}</p>
      </div>
    )
  const { answer, inhaled } = machine
  const { o2Fraction, lowO2Fraction, highO2Fraction } = answer
  return (
    <div className="answer">
      <output className="gas-change">
        {o2Fraction === null ? (
          <strong className="answer-name">{HOME_TEXT.notKnown()}</strong>
        ) : (
          <>
            <strong className="gas-clock">{purityText(o2Fraction)}</strong>{' '}
            <span>{HOME_TEXT.purity()}</span>
          </>
        )}
      </output>
      <Facts
        facts={[
          ...(lowO2Fraction === null || highO2Fraction === null || lowO2Fraction === highO2Fraction
            ? []
            : [
                {
                  name: HOME_TEXT.range(),
                  value: `${purityText(lowO2Fraction)}–${purityText(highO2Fraction)}`,
                },
              ]),
          ...(inhaled === null ? [] : [{ name: HOME_TEXT.inhaled(), value: inhaledText(inhaled) }]),
        ]}
      />
      <Lines lines={supplyTexts(answer.remarks, units)} />
      <Fold heading={GAS_TEXT.assumptions()}>
        <Lines lines={machineBasisLines(machine)} />
      </Fold>
    </div>
  )
}

function VesselResult({ answer }: { readonly answer: LiquidAnswer }) {
  const units = useGasUnits()
  const { shortestMinutes, longestMinutes, holdDays, gasL } = answer
  return (
    <div className="answer">
      {longestMinutes === null ? null : (
        <output className="gas-change">
          <span>{shortestMinutes === null ? HOME_TEXT.lastsAtMost() : HOME_TEXT.lasts()}</span>{' '}
          <strong className="gas-clock">
            {lastsText(shortestMinutes ?? longestMinutes, longestMinutes)}
          </strong>
        </output>
      )}
      <Facts
        facts={[
          { name: HOME_TEXT.gas(), value: gasVolumeText(gasL, units) },
          ...(holdDays === null ? [] : [{ name: HOME_TEXT.holds(), value: daysText(holdDays) }]),
        ]}
      />
      <Lines lines={supplyTexts(answer.remarks, units)} />
      <Fold heading={GAS_TEXT.assumptions()}>
        <Lines lines={vesselBasisLines(units)} />
      </Fold>
    </div>
  )
}
