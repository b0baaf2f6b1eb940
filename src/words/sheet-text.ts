// A bedside sheet as text by place, the same for screen, paper and terminal. Leaves out layout and the code that a telephone reads.
import { assert } from '../errors.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { STEP_PHASES } from '../sheet/step.ts'
import type { SheetState } from '../sheet/validity.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Remark } from '../planning/plan-types.ts'
import { printedText } from './breath-text.ts'
import { NO_READING, NOT_CHECKED, STANDING_CAUTIONS } from './caution-texts.ts'
import { goalText } from './goal-text.ts'
import {
  chanceText,
  fractionText,
  rangeText,
  saturationBandText,
  SHOWN_STEPS,
} from './number-text.ts'
import { remarkText } from './remark-text.ts'
import { say } from './say.ts'
import { clockLines } from './sheet-clocks.ts'
import { restsOnText } from './sheet-rests-on.ts'
import { ROW_TEXTS } from './sheet-rows.ts'
import { settingFacts } from './sheet-settings.ts'
import { phaseNames, STEP_TEXTS } from './sheet-steps.ts'
import { momentText, started } from './sheet-value.ts'
import type { RemarkTexts } from './remark-value.ts'

export interface SheetFact {
  readonly name: string
  readonly value: string
}

export interface SheetList {
  readonly id: string
  readonly name: string
  readonly lines: readonly string[]
}

export interface SheetPage {
  readonly title: string
  readonly who: string
  readonly counts: boolean
  /** Until when it counts; or that it counts no longer. */
  readonly state: string
  readonly because: string
  readonly emergency: string
  readonly settings: readonly SheetFact[]
  readonly fraction: {
    readonly name: string
    readonly value: string
    readonly spread: string
    readonly printed: string
    readonly dependsOn: string
  }
  readonly goal: readonly SheetFact[]
  readonly clocks: readonly SheetFact[]
  readonly phases: readonly SheetList[]
  readonly watch: SheetList
  readonly call: SheetList
  readonly cautions: SheetList
  readonly restsOn: SheetFact
  /** Beside the code that a telephone reads, and in its place where there is none. */
  readonly code: { readonly caption: string; readonly absent: string }
  /** Names of what is filled in by hand. */
  readonly byHand: readonly string[]
  readonly foot: readonly string[]
}

export function sheetPage(options: {
  readonly sheet: Sheet
  readonly shelf: Pick<Shelf, 'interfaces' | 'sources'>
  readonly state: SheetState
}): SheetPage {
  const { sheet, state } = options
  return {
    title: say('Bedside sheet'),
    who: whoLine(sheet),
    ...stateOf(sheet, state),
    emergency: sheet.emergency.map(remarkText).join(' '),
    settings: settingFacts(options),
    fraction: fractionOf(sheet),
    goal: goalFacts(sheet),
    clocks: clockLines(sheet),
    phases: phasesOf(sheet),
    watch: { id: 'watch', name: say('Watch'), lines: sentences(sheet.watch.map(remarkText)) },
    call: { id: 'call', name: say('Call for help'), lines: rowTexts(sheet.call) },
    cautions: {
      id: 'cautions',
      name: say('Cautions'),
      lines: [...sentences(sheet.cautions.map(remarkText)), ...STANDING_CAUTIONS],
    },
    restsOn: { name: say('Rests on'), value: restsOnText(sheet) },
    code: {
      caption: say(
        'Opens this sheet without a network. Holds case and bed; not the patient’s code, no note.',
      ),
      absent: say('No code to scan: the address of this installation is not known.'),
    },
    byHand: [say('Checked by (name, signature)'), say('Time'), say('Checked again'), say('Time')],
    foot: footOf(sheet),
  }
}

function whoLine({ bed, code }: Sheet): string {
  const parts = [bed === null ? say('Bed: ________') : say('Bed {bed}', { bed }), code ?? '']
  return parts.filter((part) => part !== '').join(' · ')
}

/** What ends it, and when the patient is looked at before that. */
function becauseText({ validity, lookAgainAt }: Sheet): string {
  const why = saidBy(ROW_TEXTS, validity.because)
  if (lookAgainAt === validity.until)
    return say(
      'Because: {why}. Only for these readings and this set-up. Any change: a new sheet.',
      {
        why,
      },
    )
  return say(
    'Because: {why}. Look at the patient again by {again}. Only for these readings and this set-up. Any change: a new sheet.',
    { why, again: momentText(lookAgainAt) },
  )
}

function stateOf(sheet: Sheet, state: SheetState): Pick<SheetPage, 'counts' | 'state' | 'because'> {
  const { validity, readAt } = sheet
  const until = momentText(validity.until)
  switch (state) {
    case 'counts':
      return {
        counts: true,
        state: say('Valid until {until}', { until }),
        because: becauseText(sheet),
      }
    case 'past':
      return {
        counts: false,
        state: say('NOT VALID since {until}', { until }),
        because: say('Do not use: read anew and make a new sheet.'),
      }
    case 'clock-before':
      return {
        counts: false,
        state: say('NOT VALID: the clock is wrong'),
        because: say('The readings are of {read}, which this clock has not reached.', {
          read: momentText(readAt),
        }),
      }
  }
}

function fractionOf(sheet: Sheet): SheetPage['fraction'] {
  const { low, high, median } = sheet.effectiveO2Fraction
  const causes = rowTexts(sheet.dependsOn).join(', ')
  const spread = rangeText({ low, high, step: SHOWN_STEPS.o2Fraction })
  return {
    name: say('Inspired oxygen fraction'),
    value: say('about {fraction}', { fraction: fractionText(median) }),
    spread: sheet.isChecked
      ? say('{spread} for 8 of 10 patients', { spread })
      : say('{spread} for 8 of 10 patients; {mark}', { spread, mark: NOT_CHECKED }),
    printed: printedText(sheet.printedO2Fraction),
    dependsOn: say('Depends on {causes}.', { causes }),
  }
}

function goalFacts(sheet: Sheet): readonly SheetFact[] {
  return [
    { name: say('Goal'), value: goalText(sheet.goal) },
    ...(sheet.saturationPercent === null
      ? []
      : [{ name: say('Saturation expected'), value: saturationBandText(sheet.saturationPercent) }]),
    ...(sheet.chance === null
      ? []
      : [{ name: say('Chance in range'), value: chanceLine(sheet, sheet.chance.inRange) }]),
  ]
}

function chanceLine({ isReadingUsed }: Sheet, inRange: number): string {
  return isReadingUsed ? chanceText(inRange) : `${chanceText(inRange)}; ${NO_READING}`
}

function phasesOf(sheet: Sheet): readonly SheetList[] {
  const names = phaseNames()
  return STEP_PHASES.map((phase) => ({
    id: phase,
    name: names[phase],
    lines: sheet.steps
      .filter((step) => step.phase === phase)
      .map((step) => saidBy(STEP_TEXTS, step)),
  })).filter(({ lines }) => lines.length > 0)
}

function footOf(sheet: Sheet): readonly string[] {
  return [
    say(
      'Made {made} from readings of {read}; model {version}; {count, plural, one {# value} other {# values}} assumed.',
      {
        made: momentText(sheet.madeAt),
        read: momentText(sheet.readAt),
        version: sheet.modelVersion,
        count: sheet.assumedCount,
      },
    ),
    ...(sheet.isDemoShelf
      ? [say('Invented hospital and shelf: for trying out, not for care.')]
      : []),
  ]
}

function rowTexts(remarks: readonly Remark[]): readonly string[] {
  return remarks.map((remark) => saidBy(ROW_TEXTS, remark))
}

function saidBy(texts: RemarkTexts, { code, values }: Pick<Remark, 'code' | 'values'>): string {
  const text = texts[code]
  assert(text !== undefined, `words/sheet text of ${code}`)
  return text(values)
}

/** Remarks of a plan begin small and end without a stop, because they also stand inside a line. */
function sentences(lines: readonly string[]): readonly string[] {
  return lines.map((line) => (/[.?:]$/.test(line) ? started(line) : `${started(line)}.`))
}
