// What a bedside sheet must say for every set-up of the demo shelf, written from the set-ups themselves and looked for in the words of the sheet. Leaves out its layout.
import { describe, expect, it } from 'vitest'
import type { StepPhase } from '../src/sheet/step.ts'
import { applies, STEP_PHASES } from '../src/sheet/step.ts'
import { STEPS, stepsFor } from '../src/sheet/step-table.ts'
import { sheetValues, valuesFor } from '../src/sheet/values.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { CALL_ROWS, DEPENDS_ROWS, VALIDITY_ROWS } from '../src/sheet/watch-rows.ts'
import { ROW_TEXTS } from '../src/words/sheet-rows.ts'
import { STEP_TEXTS } from '../src/words/sheet-steps.ts'
import { CANDIDATES, sheetSubjects } from './support/sheet-candidates.ts'
import type { SheetSubject } from './support/sheet-candidates.ts'

interface Said {
  readonly phase: StepPhase
  readonly text: string
}

function said({ candidate, about, facts }: SheetSubject): readonly Said[] {
  const values = sheetValues({ setUp: candidate.setUp, shelf: DEMO_SHELF, goal: about.goal })
  return stepsFor(facts).map((step) => ({
    phase: step.phase,
    text: STEP_TEXTS[step.id]?.(valuesFor(step.values, values)) ?? `no text of ${step.id}`,
  }))
}

interface Requirement {
  readonly name: string
  readonly when: (subject: SheetSubject) => boolean
  readonly phase: StepPhase
  readonly says: RegExp
}

const kind = ({ candidate }: SheetSubject): string => candidate.setUp.source.kind
const family = ({ candidate }: SheetSubject): string => candidate.setUp.family
const isBag = (subject: SheetSubject): boolean => family(subject).includes('rebreather')
const isAtNeck = (subject: SheetSubject): boolean =>
  ['tracheostomy-mask', 't-piece', 't-piece-with-limb'].includes(family(subject))
const isNose = (subject: SheetSubject): boolean => family(subject).startsWith('nasal')
const isFaceMask = (subject: SheetSubject): boolean =>
  !isNose(subject) && !isAtNeck(subject) && family(subject) !== 'head-box'
const route = ({ about }: SheetSubject): string => about.patient.airway.route
const hasTube = (subject: SheetSubject): boolean => route(subject) === 'tracheostomy'
const isMixed = (subject: SheetSubject): boolean =>
  kind(subject) === 'blender' || kind(subject) === 'ventilator'
const isHeated = (subject: SheetSubject): boolean =>
  isMixed(subject) && subject.humidifier !== 'exchanger'
const needsMains = (subject: SheetSubject): boolean =>
  isHeated(subject) || ['ventilator', 'concentrator'].includes(kind(subject))
const isSmall = ({ about }: SheetSubject): boolean => about.patient.ageYears < 2
const isProngs = (subject: SheetSubject): boolean =>
  ['nasal-cannula', 'nasal-high-flow', 'cannula-under-mask'].includes(family(subject))
const always = (): boolean => true

const REQUIREMENTS: readonly Requirement[] = [
  { name: 'right patient', when: always, phase: 'prepare', says: /right patient: bed and code/i },
  {
    name: 'fire',
    when: always,
    phase: 'prepare',
    says: /no smoking, flame, oil or grease.*paraffin/i,
  },
  {
    name: 'defibrillation',
    when: always,
    phase: 'each-shift',
    says: /defibrillation.*metre away/i,
  },
  {
    name: 'five minutes',
    when: always,
    phase: 'verify',
    says: /stay 5 minutes after each change: the patient first/i,
  },
  {
    name: 'no change without a new sheet',
    when: always,
    phase: 'each-shift',
    says: /change: a new sheet/i,
  },
  { name: 'gas felt', when: always, phase: 'check-before-use', says: /gas felt.*no kink/i },
  {
    name: 'help first if the gas fails',
    when: always,
    phase: 'if-gas-fails',
    says: /look at the patient\. call for help/i,
  },
  {
    name: 'another source if the gas fails',
    when: always,
    phase: 'if-gas-fails',
    says: /oxygen from another source/i,
  },
  {
    name: 'bag and mask when not breathing',
    when: always,
    phase: 'if-gas-fails',
    says: /not breathing, gasping.*bag and mask/i,
  },
  {
    name: 'bag filled before fitting',
    when: isBag,
    phase: 'fit',
    says: /fill the bag before fitting/i,
  },
  { name: 'bag never collapsing', when: isBag, phase: 'verify', says: /bag never collapses/i },
  { name: 'bag sound', when: isBag, phase: 'check-before-use', says: /bag whole/i },
  {
    name: 'close-fitting mask off',
    when: (s) => isBag(s) || family(s) === 'cannula-under-mask',
    phase: 'if-gas-fails',
    says: /take the mask off at once/i,
  },
  {
    name: 'every other mask off as well',
    when: (s) => isFaceMask(s) && !isBag(s) && family(s) !== 'cannula-under-mask',
    phase: 'if-gas-fails',
    says: /take it off the face while no gas flows/i,
  },
  {
    name: 'T-piece off',
    when: (s) => family(s).startsWith('t-piece'),
    phase: 'if-gas-fails',
    says: /t-piece off/i,
  },
  {
    name: 'box open',
    when: (s) => family(s) === 'head-box',
    phase: 'if-gas-fails',
    says: /open the box at once: carbon dioxide/i,
  },
  {
    name: 'minimum flow where expired gas would be breathed again',
    when: (s) => isBag(s) || ['simple-mask', 'cannula-under-mask', 'head-box'].includes(family(s)),
    phase: 'verify',
    says: /never below \d+(\.\d+)? L\/min: expired gas/i,
  },
  {
    name: 'printed minimum of a valve',
    when: (s) => family(s).includes('entrainment'),
    phase: 'verify',
    says: /never below the printed \d+(\.\d+)? L\/min at 0\.\d+/i,
  },
  {
    name: 'minimum of a stream',
    when: (s) => isAtNeck(s) || ['aerosol-mask', 'face-tent'].includes(family(s)),
    phase: 'verify',
    says: /stream never below \d+ L\/min/i,
  },
  {
    name: 'ports free',
    when: (s) => family(s).includes('entrainment'),
    phase: 'check-before-use',
    says: /air ports stay free/i,
  },
  {
    name: 'way out open',
    when: isAtNeck,
    phase: 'check-before-use',
    says: /way out is open and never capped/i,
  },
  { name: 'suction', when: isAtNeck, phase: 'check-before-use', says: /suction tested/i },
  { name: 'suction before fitting', when: isAtNeck, phase: 'fit', says: /suction first/i },
  {
    name: 'spare tube and inner cannula',
    when: hasTube,
    phase: 'check-before-use',
    says: /spare tube.*spare inner cannula/i,
  },
  {
    name: 'inner cannula each shift',
    when: hasTube,
    phase: 'each-shift',
    says: /inner cannula out, cleaned or changed/i,
  },
  {
    name: 'cuff pressure',
    when: ({ about: { patient } }) =>
      patient.airway.route === 'tracheostomy' && patient.airway.tube.cuff === 'up',
    phase: 'fit',
    says: /cuff pressure by gauge, 20–30 cmH₂O/i,
  },
  {
    name: 'cuff pressure each shift',
    when: ({ about: { patient } }) =>
      patient.airway.route === 'tracheostomy' && patient.airway.tube.cuff === 'up',
    phase: 'each-shift',
    says: /cuff pressure by gauge, 20–30 cmH₂O/i,
  },
  {
    name: 'cuff down under a speaking valve',
    when: ({ about: { patient } }) =>
      patient.airway.route === 'tracheostomy' && patient.airway.tube.speakingValve,
    phase: 'fit',
    says: /cuff fully down before the speaking valve/i,
  },
  {
    name: 'exchanger off under active humidification',
    when: (s) =>
      isAtNeck(s) &&
      'heatMoistureExchanger' in s.about.patient.airway &&
      s.about.patient.airway.heatMoistureExchanger,
    phase: 'fit',
    says: /exchanger off first: never together/i,
  },
  {
    name: 'exchanger of a tube off under active humidification',
    when: (s) =>
      isAtNeck(s) &&
      s.about.patient.airway.route === 'tracheostomy' &&
      s.about.patient.airway.tube.heatMoistureExchanger,
    phase: 'fit',
    says: /exchanger off first: never together/i,
  },
  {
    name: 'exchanger changed where nothing else wets the gas',
    when: (s) =>
      !isAtNeck(s) &&
      s.about.patient.airway.route === 'tracheostomy' &&
      s.about.patient.airway.tube.heatMoistureExchanger,
    phase: 'each-shift',
    says: /exchanger changed when wet/i,
  },
  {
    name: 'neck breather in an emergency',
    when: (s) => route(s) !== 'natural',
    phase: 'if-gas-fails',
    says: /oxygen to the face and to the neck until the airway is known/i,
  },
  {
    name: 'laryngectomy breathes by the neck alone',
    when: (s) => route(s) === 'laryngectomy',
    phase: 'if-gas-fails',
    says: /by the neck alone/i,
  },
  {
    name: 'blocked tube',
    when: hasTube,
    phase: 'if-gas-fails',
    says: /inner cannula out, cuff down\. call/i,
  },
  {
    name: 'no breaths from a ventilator',
    when: (s) => kind(s) === 'ventilator',
    phase: 'verify',
    says: /no breaths; no apnoea or disconnection alarm/i,
  },
  {
    name: 'inspiratory limb alone',
    when: (s) => kind(s) === 'ventilator',
    phase: 'prepare',
    says: /constant flow only.*inspiratory limb with its filter/i,
  },
  {
    name: 'both gases',
    when: isMixed,
    phase: 'prepare',
    says: /oxygen hose into oxygen, air hose into air/i,
  },
  {
    name: 'one of two gases fails',
    when: isMixed,
    phase: 'if-gas-fails',
    says: /one of two gases lost/i,
  },
  {
    name: 'mixed gas analysed',
    when: isMixed,
    phase: 'check-before-use',
    says: /oxygen analyser/i,
  },
  {
    name: 'mains',
    when: needsMains,
    phase: 'prepare',
    says: /mains plug/i,
  },
  {
    name: 'mains lost',
    when: needsMains,
    phase: 'if-gas-fails',
    says: /mains lost/i,
  },
  {
    name: 'heater off when the flow stops',
    when: isHeated,
    phase: 'if-gas-fails',
    says: /heater off whenever the flow stops/i,
  },
  {
    name: 'heater on with gas alone',
    when: isHeated,
    phase: 'prepare',
    says: /heater on only with gas flowing/i,
  },
  {
    name: 'exchanger put on',
    when: (s) => s.humidifier === 'exchanger',
    phase: 'fit',
    says: /new exchanger on the tube, dated/i,
  },
  {
    name: 'exchanger of the chain changed',
    when: (s) => s.humidifier === 'exchanger',
    phase: 'each-shift',
    says: /exchanger changed when wet/i,
  },
  {
    name: 'exchanger off while a drug is nebulised',
    when: (s) =>
      s.facts.hasExchanger &&
      s.about.patient.changes.includes('nebulised-drug') &&
      !(isAtNeck(s) && (isHeated(s) || kind(s) === 'jet-nebuliser')),
    phase: 'fit',
    says: /drug being nebulised: exchanger off meanwhile, back on/i,
  },
  {
    name: 'water in the hose drained away',
    when: (s) =>
      isMixed(s) ||
      kind(s) === 'jet-nebuliser' ||
      ['bubble', 'collar'].includes(s.humidifier ?? ''),
    phase: 'each-shift',
    says: /drain water.*away from the patient/i,
  },
  {
    name: 'nebuliser water',
    when: (s) => kind(s) === 'jet-nebuliser',
    phase: 'prepare',
    says: /sterile water between the marks, dated; dial at/i,
  },
  {
    name: 'bubble bottle',
    when: (s) => s.humidifier === 'bubble',
    phase: 'prepare',
    says: /bubble bottle: sterile water/i,
  },
  {
    name: 'water of a collar',
    when: (s) => s.humidifier === 'collar',
    phase: 'prepare',
    says: /mist for the collar: sterile water between the marks, dated/i,
  },
  {
    name: 'air meter of a collar at the air outlet',
    when: (s) => s.humidifier === 'collar',
    phase: 'prepare',
    says: /air meter of the mist: outlet that is named air.*never the mask/i,
  },
  {
    name: 'mist of a collar seen',
    when: (s) => s.humidifier === 'collar',
    phase: 'verify',
    says: /mist seen at the collar/i,
  },
  {
    name: 'hose of a collar below the patient',
    when: (s) => s.humidifier === 'collar',
    phase: 'fit',
    says: /hose lower than the patient/i,
  },
  {
    name: 'water of any vessel looked at',
    when: (s) =>
      isHeated(s) ||
      kind(s) === 'jet-nebuliser' ||
      ['bubble', 'collar'].includes(s.humidifier ?? ''),
    phase: 'each-shift',
    says: /water level; sterile water, dated/i,
  },
  {
    name: 'air meter of a collar taken out',
    when: (s) => s.humidifier === 'collar',
    phase: 'each-shift',
    says: /take the air meter out/i,
  },
  {
    name: 'flow of a mask over a cannula named',
    when: (s) => family(s) === 'cannula-under-mask',
    phase: 'verify',
    says: /flow of the mask never below [45] L\/min: expired gas/i,
  },
  {
    name: 'feeding tube and the other nostril',
    when: (s) => isNose(s) && s.about.patient.changes.includes('feeding-tube'),
    phase: 'fit',
    says: /other nostril/i,
  },
  {
    name: 'head of a small child lies straight',
    when: isSmall,
    phase: 'fit',
    says: /head straight, neck neither bent/i,
  },
  {
    name: 'prongs of a small child taped',
    when: (s) => isSmall(s) && isProngs(s),
    phase: 'fit',
    says: /taped to both cheeks, never round the neck/i,
  },
  {
    name: 'relief valve',
    when: (s) => s.humidifier === 'bubble',
    phase: 'check-before-use',
    says: /relief valve sounds/i,
  },
  {
    name: 'oxygen outlet by name',
    when: (s) => ['wall-flowmeter', 'two-flowmeters', 'jet-nebuliser'].includes(kind(s)),
    phase: 'prepare',
    says: /outlet that is named oxygen.*never an air outlet/i,
  },
  {
    name: 'two meters',
    when: (s) => kind(s) === 'two-flowmeters',
    phase: 'prepare',
    says: /two meters, each set to (10|12|15) L\/min/i,
  },
  {
    name: 'concentrator free',
    when: (s) => kind(s) === 'concentrator',
    phase: 'prepare',
    says: /free on all sides/i,
  },
  {
    name: 'back-up of a concentrator',
    when: (s) => kind(s) === 'concentrator',
    phase: 'each-shift',
    says: /back-up cylinder full/i,
  },
  {
    name: 'cylinder valve open',
    when: (s) => kind(s) === 'cylinder-regulator',
    phase: 'prepare',
    says: /valve slowly and fully open/i,
  },
  {
    name: 'cylinder gauge read',
    when: (s) => kind(s) === 'cylinder-regulator',
    phase: 'prepare',
    says: /read the gauge/i,
  },
  {
    name: 'cylinder secured',
    when: (s) => kind(s) === 'cylinder-regulator',
    phase: 'prepare',
    says: /cylinder secured.*grease/i,
  },
  {
    name: 'flush named',
    when: (s) => s.candidate.setUp.flow.kind === 'flush',
    phase: 'check-before-use',
    says: /fully open, beyond its scale/i,
  },
  {
    name: 'meter in mL/min',
    when: (s) => s.candidate.setUp.source.id === 'wall-200-ml',
    phase: 'check-before-use',
    says: /set \d+ mL\/min\. not L\/min/i,
  },
  {
    name: 'skin at nose and ears',
    when: isNose,
    phase: 'each-shift',
    says: /skin at nose, cheeks and ears/i,
  },
  {
    name: 'skin under a mask',
    when: isFaceMask,
    phase: 'each-shift',
    says: /skin at bridge of nose/i,
  },
  {
    name: 'prongs of the small',
    when: (s) => family(s) === 'nasal-cannula' && s.candidate.setUp.size !== 'adult',
    phase: 'fit',
    says: /no more than half of each nostril/i,
  },
  {
    name: 'warm gas',
    when: (s) => family(s) === 'nasal-high-flow',
    phase: 'fit',
    says: /gas warm before it touches the nose/i,
  },
  {
    name: 'never tied',
    when: ({ about }) => about.patient.changes.includes('confused-and-pulling'),
    phase: 'fit',
    says: /never tie down/i,
  },
  {
    name: 'vomiting under a mask',
    when: (s) => isFaceMask(s) && s.about.patient.changes.includes('vomiting-risk'),
    phase: 'fit',
    says: /retching: mask off at once/i,
  },
  {
    name: 'carbon monoxide',
    when: ({ about }) => about.goal.reason === 'carbon-monoxide',
    phase: 'verify',
    says: /the oximeter reads it as oxygen/i,
  },
  {
    name: 'blood gas at risk',
    when: ({ about }) => about.patient.retentionRisk !== 'none',
    phase: 'verify',
    says: /blood gas within 30–60 minutes/i,
  },
  {
    name: 'opioids',
    when: ({ about }) => about.breathing.state === 'slow-under-opioids',
    phase: 'verify',
    says: /count the rate/i,
  },
]

const subjects = [...sheetSubjects()]
const SAID = new Map(subjects.map((subject) => [subject, said(subject)]))

function linesOf(subject: SheetSubject): readonly Said[] {
  return SAID.get(subject) ?? []
}

describe('every set-up of the demo shelf', () => {
  it('is looked at, on every airway and age it may be put before', () => {
    expect(CANDIDATES.length).toBeGreaterThanOrEqual(1051)
    expect(new Set(subjects.map(({ candidate }) => candidate.id)).size).toBe(CANDIDATES.length)
    expect(subjects.length).toBeGreaterThan(5 * CANDIDATES.length)
  })

  it('has the steps its parts, its airway and its patient require', () => {
    const missing = new Set<string>()
    const met = new Map(REQUIREMENTS.map(({ name }) => [name, 0]))
    for (const subject of subjects) {
      const lines = linesOf(subject)
      for (const { name, when, phase, says } of REQUIREMENTS) {
        if (!when(subject)) continue
        met.set(name, (met.get(name) ?? 0) + 1)
        const isThere = lines.some((line) => line.phase === phase && says.test(line.text))
        if (!isThere) missing.add(`${subject.candidate.id}: ${name}`)
      }
    }
    expect([...missing].slice(0, 10)).toEqual([])
    expect([...met].filter(([, count]) => count === 0)).toEqual([])
  })

  it('fills a bag before the mask goes on', () => {
    for (const subject of subjects.filter(isBag)) {
      const texts = linesOf(subject).map(({ text }) => text)
      const fill = texts.findIndex((text) => /fill the bag/i.test(text))
      expect(fill).toBeGreaterThan(-1)
      expect(fill).toBeLessThan(texts.findIndex((text) => /mask snug/i.test(text)))
    }
  })

  it('has its steps in the order of their phases', () => {
    for (const subject of subjects) {
      const order = linesOf(subject).map(({ phase }) => STEP_PHASES.indexOf(phase))
      expect(order).toEqual(order.toSorted((a, b) => a - b))
    }
  })

  it('is told nothing that another interface needs', () => {
    for (const subject of subjects) {
      const text = linesOf(subject)
        .map((line) => line.text)
        .join('\n')
      expect(/\bbag before fitting|bag never collapses/i.test(text)).toBe(isBag(subject))
      expect(/dial at 0|dial at 1/i.test(text) && kind(subject) === 'blender').toBe(false)
      expect(/inner cannula out, cleaned/i.test(text)).toBe(hasTube(subject))
      expect(isSmall(subject) && /sitting up|slide under the chin/i.test(text)).toBe(false)
      expect(/heater|stays cold/i.test(text)).toBe(isHeated(subject))
      expect(/collar/i.test(text)).toBe(subject.humidifier === 'collar')
      expect(/mL\/min/.test(text)).toBe(subject.candidate.setUp.source.id === 'wall-200-ml')
    }
  })
})

describe('every sheet', () => {
  it('says when to call, what the fraction depends on and how long it counts', () => {
    for (const { facts } of subjects) {
      for (const rows of [CALL_ROWS, DEPENDS_ROWS, VALIDITY_ROWS]) {
        expect(rows.some((row) => applies(row, facts))).toBe(true)
      }
    }
  })
})

describe('the step table', () => {
  it('has no row that applies to nothing', () => {
    const used = new Set<string>()
    for (const { facts } of subjects) for (const { id } of stepsFor(facts)) used.add(id)
    expect(STEPS.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([])
  })

  it('has rows of calls, of causes and of times of which each applies to something', () => {
    const rows = [...CALL_ROWS, ...DEPENDS_ROWS, ...VALIDITY_ROWS]
    const dead = rows.filter((row) => !subjects.some(({ facts }) => applies(row, facts)))
    expect(dead).toEqual([])
    expect(Object.keys(ROW_TEXTS).toSorted()).toEqual(rows.map(({ id }) => id).toSorted())
  })

  it('has one text for each row and one row for each text', () => {
    const ids = STEPS.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(Object.keys(STEP_TEXTS).toSorted()).toEqual(ids.toSorted())
  })
})
