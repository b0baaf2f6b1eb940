// What the command line says: help, headings, usage errors. Leaves out what the core and the pictures say.
import { say } from './say.ts'

export const CLI_NAME = 'oxwright'

export interface OptionHelp {
  readonly option: string
  readonly help: string
}

export interface VerbHelp {
  readonly usage: string
  readonly summary: string
  readonly options: readonly OptionHelp[]
  readonly examples: readonly string[]
}

const COMMON: readonly OptionHelp[] = [
  { option: '--json', help: say('print the whole answer as JSON (schemas in schema/)') },
  { option: '--progress', help: say('show progress even where the error output is no terminal') },
  {
    option: '--language TAG',
    help: say('en or de (default en, or what OXWRIGHT_LANGUAGE says); JSON stays in English'),
  },
  { option: '--help', help: say('this text') },
]

const WATER = [
  { option: '--room-temperature C', help: say('temperature of the room, °C') },
  { option: '--room-humidity PERCENT', help: say('relative humidity of the room, %') },
  { option: '--heater C', help: say('gas leaving the heater as set, °C; not its plate') },
] as const

const SHELF: readonly OptionHelp[] = [
  {
    option: '--shelf FILE',
    help: say('the ward’s own shelf, JSON, YAML or CSV (default: the demo shelf)'),
  },
  { option: '--ward ID', help: say('only what this ward can take from its place') },
  { option: '--draws N', help: say('patients drawn for the spread, 64–8192 (default 512)') },
  { option: '--seed N', help: say('another sample of the same size (default 1)') },
]

/** Name, one-line summary and options of every verb; a verb without an entry cannot be typed. */
export const VERB_HELP = {
  plan: {
    usage: 'plan CASE',
    summary: say('rank the set-ups of a shelf for a case and its goal'),
    options: [
      ...SHELF,
      { option: '--top N', help: say('rows of the table (default 10)') },
      { option: '--all', help: say('every ranked set-up, and each one ruled out with its reason') },
      { option: '--svg FILE', help: say('write the reach chart') },
      { option: '--pressure UNIT', help: say('kPa, mmHg or Torr (default kPa)') },
      ...COMMON,
    ],
    examples: [
      'plan examples/nasal-cannula.json',
      'plan examples/nasal-cannula.json --ward heron --top 5 --svg reach.svg',
      'plan - --json < case.yaml',
    ],
  },
  breath: {
    usage: 'breath CASE',
    summary: say('what the set-up on now really delivers, breath by breath'),
    options: [
      {
        option: '--set-up ID',
        help: say('another set-up of the shelf, by the id that plan --json gives'),
      },
      ...SHELF,
      {
        option: '--svg FILE',
        help: say('write the breath ribbon; with --set-up: before and after'),
      },
      { option: '--pressure UNIT', help: say('kPa, mmHg or Torr (default kPa)') },
      ...COMMON,
    ],
    examples: [
      'breath examples/simple-mask.json',
      'breath examples/simple-mask.json --svg ribbon.svg',
      'breath examples/simple-mask.json --set-up non-rebreather/adult@wall-15#15 --svg change.svg',
    ],
  },
  humidity: {
    usage: 'humidity CASE',
    summary: say('water that reaches the airway, what is required, refills, condensate, rules'),
    options: [
      {
        option: '--set-up ID',
        help: say('another set-up of the shelf, by the id that plan --json gives'),
      },
      {
        option: '--shelf FILE',
        help: say('the ward’s own shelf, JSON, YAML or CSV (default: the demo shelf)'),
      },
      { option: '--ward ID', help: say('only what this ward can take from its place') },
      ...WATER,
      ...COMMON,
    ],
    examples: [
      'humidity examples/tracheostomy-mask.json',
      'humidity examples/tracheostomy-mask.json --set-up t-piece/adult@ventilator#20:0.4 --heater 37',
    ],
  },
  cylinder: {
    usage: 'cylinder',
    summary: say('how long a cylinder lasts for what is really drawn: change at, empty at'),
    options: [
      { option: '--water L', help: say('water volume in litres, as stamped on the cylinder') },
      {
        option: '--gauge PRESSURE',
        help: say('gauge reading with its unit: 137bar, 2000psi, 13700kPa'),
      },
      { option: '--flow FLOW', help: say('oxygen drawn, L/min') },
      {
        option: '--case FILE',
        help: say('instead of --flow: draw what the set-up on now of a case draws'),
      },
      {
        option: '--left PRESSURE',
        help: say('reserve left in it, at which it is changed (default 14bar)'),
      },
      {
        option: '--minimum PRESSURE',
        help: say('below this the regulator no longer keeps its flow (default 0bar)'),
      },
      {
        option: '--gauge-error PRESSURE',
        help: say('how far the gauge may be wrong (default 0bar)'),
      },
      {
        option: '--shelf FILE',
        help: say('the ward’s own shelf, JSON, YAML or CSV (default: the demo shelf)'),
      },
      { option: '--read-at C', help: say('temperature when the gauge was read, °C (default 20)') },
      { option: '--used-at C', help: say('temperature of use, °C (default: as read)') },
      { option: '--altitude M', help: say('altitude of use, m (default 0)') },
      {
        option: '--bias FLOW',
        help: say('bias flow of a ventilator as source, L/min; beside --flow it counts as oxygen'),
      },
      { option: '--jet FLOW', help: say('jet nebuliser for drugs driven by oxygen, L/min') },
      { option: '--leak FLOW', help: say('known leak, L/min') },
      { option: '--closed', help: say('the valve has not been opened') },
      {
        option: '--now HH:MM',
        help: say('clock time to count from (default: this machine’s clock)'),
      },
      { option: '--units UNIT', help: say('bar, psi or kPa in the answer (default bar)') },
      { option: '--volume UNIT', help: say('L or ft3 in the answer (default L)') },
      ...COMMON,
    ],
    examples: [
      'cylinder --water 4.7 --gauge 137bar --flow 6 --now 13:50',
      'cylinder --water 2 --gauge 3300psi --case examples/simple-mask.json --units psi',
      'cylinder --water 10 --gauge 150bar --flow 5 --read-at 35 --used-at=-5 --json',
    ],
  },
  sheet: {
    usage: 'sheet CASE',
    summary: say(
      'the bedside sheet of a set-up: settings, steps, when to call; as one page of PDF',
    ),
    options: [
      {
        option: '--set-up ID',
        help: say(
          'of the shelf, by the id that plan --json gives (default: the first of the plan)',
        ),
      },
      ...SHELF,
      {
        option: '--humidifier KIND',
        help: say(
          'none, bubble, collar, heated, pass-over or exchanger (default: what the set-up usually has)',
        ),
      },
      { option: '--pdf FILE', help: say('write one page of PDF') },
      { option: '--paper SIZE', help: say('a4 or letter (default a4)') },
      {
        option: '--base-url URL',
        help: say('address of your installation; with it the sheet bears a code to scan'),
      },
      {
        option: '--made-at TIME',
        help: say('such as 2026-11-25T13:05 (default: this machine’s clock)'),
      },
      {
        option: '--readings-at TIME',
        help: say('when the readings of the case were taken; it counts from there (default: now)'),
      },
      { option: '--water L', help: say('water volume of the cylinder at the bed, in litres') },
      { option: '--gauge P', help: say('its gauge with unit: 137bar, 1990psi or 13700kPa') },
      { option: '--left P', help: say('gauge at which it is changed (default 14bar)') },
      { option: '--units UNIT', help: say('bar, psi or kPa in the answer (default bar)') },
      ...COMMON,
    ],
    examples: [
      'sheet examples/tracheostomy-mask.json',
      'sheet examples/simple-mask.json --set-up non-rebreather/adult@wall-15#15 --pdf sheet.pdf --paper letter',
      'sheet examples/entrainment-mask.json --set-up entrainment-mask/adult@wall-15#4:0.28 --humidifier collar',
      'sheet examples/nasal-cannula.json --set-up nasal-cannula/adult@cylinder-flush#2 --water 2 --gauge 137bar --base-url https://oxwright.example',
    ],
  },
  transfer: {
    usage: 'transfer FILE',
    summary: say('which cylinders a way needs, when to change them, and the sheet to print'),
    options: [
      { option: '--now HH:MM', help: say('when the way begins (default: this machine’s clock)') },
      { option: '--sheet', help: say('the transfer sheet to print, with boxes to tick') },
      { option: '--svg FILE', help: say('write the timeline: cylinders over the legs of the way') },
      { option: '--case FILE', help: say('case of the patient: what is inhaled on each leg') },
      {
        option: '--shelf FILE',
        help: say('the ward’s own shelf, JSON, YAML or CSV (default: the demo shelf)'),
      },
      { option: '--units UNIT', help: say('bar, psi or kPa in the answer (default bar)') },
      { option: '--volume UNIT', help: say('L or ft3 in the answer (default L)') },
      ...COMMON,
    ],
    examples: [
      'transfer examples/transfers/heron-to-scanner.yaml --now 14:05',
      'transfer examples/transfers/heron-to-scanner.yaml --now 14:05 --sheet',
      'transfer examples/transfers/plover-by-air.yaml --now 9:30 --svg timeline.svg',
      'transfer examples/transfers/plover-by-air.yaml --case examples/non-rebreather-mask.yaml --json',
    ],
  },
  'ward-demand': {
    usage: 'ward-demand FILE',
    summary: say('what a ward draws against its supply, and the lights-out drill'),
    options: [
      { option: '--drill', help: say('the lights-out drill, a table for each failure') },
      {
        option: '--failure ID',
        help: say('the drill for one failure: mains, pipeline-oxygen, medical-air, blender'),
      },
      {
        option: '--more-flow FLOW',
        help: say('flow of one more high-flow patient, L/min (default 60)'),
      },
      { option: '--more-fraction F', help: say('and the fraction set (default 1)') },
      { option: '--svg FILE', help: say('write the demand beside what the pipework carries') },
      { option: '--draws N', help: say('draws of the simulation, 64–100000 (default 4000)') },
      { option: '--seed N', help: say('another sample of the same size (default 1)') },
      {
        option: '--shelf FILE',
        help: say('the ward’s own shelf, JSON, YAML or CSV (default: the demo shelf)'),
      },
      ...COMMON,
    ],
    examples: [
      'ward-demand examples/wards/heron.yaml --svg demand.svg',
      'ward-demand examples/wards/plover.yaml --drill',
      'ward-demand examples/wards/wren.yaml --more-flow 20 --more-fraction 0.5 --json',
    ],
  },
  room: {
    usage: 'room',
    summary: say('how rich in oxygen the air of a room, an ambulance or a tent becomes, and when'),
    options: [
      { option: '--oxygen FLOW', help: say('oxygen given to patients in it, L/min, all of them') },
      { option: '--volume M3', help: say('volume of the room, m³') },
      { option: '--air-changes N', help: say('air changes with outside air, in an hour') },
      {
        option: '--like PLACE',
        help: say('in place of both: side-room, bay, ambulance or tent; assumed, not measured'),
      },
      { option: '--aside FLOW', help: say('a mask laid aside, running, L/min (default 0)') },
      { option: '--limit F', help: say('share counted as enriched (default 0.235)') },
      { option: '--minutes N', help: say('look ahead, 1–10080 min (default 60)') },
      { option: '--svg FILE', help: say('write the course of the share over time') },
      ...COMMON,
    ],
    examples: [
      'room --like side-room --oxygen 60',
      'room --volume 30 --air-changes 1 --oxygen 60 --aside 15 --svg room.svg',
    ],
  },
  stock: {
    usage: 'stock FILE',
    summary: say('interfaces and consumables: use a day, days left, when to order'),
    options: [...COMMON],
    examples: ['stock examples/stocks/heron.yaml', 'stock examples/stocks/heron.yaml --json'],
  },
  chain: {
    usage: 'chain CASE',
    summary: say(
      'the parts from gas outlet to patient in order and their water, what is missing and who has it',
    ),
    options: [
      {
        option: '--set-up ID',
        help: say(
          'of the shelf, by the id that plan --json gives (default: the first of the plan)',
        ),
      },
      ...SHELF,
      ...WATER,
      { option: '--svg FILE', help: say('write the picture of the chain') },
      ...COMMON,
    ],
    examples: [
      'chain examples/simple-mask.json --ward heron --svg chain.svg',
      'chain examples/tracheostomy-mask.json --set-up tracheostomy-mask/adult@nebuliser#10:0.4 --json',
    ],
  },
  shelf: {
    usage: 'shelf FILE',
    summary: say('check a shelf file row by row, JSON or spreadsheet; write it as the other'),
    options: [
      {
        option: '--into FILE',
        help: say('the shelf it is put into; rows that the file does not have stay'),
      },
      { option: '--to-csv FILE', help: say('write the shelf as a spreadsheet (CSV)') },
      { option: '--to-json FILE', help: say('write the shelf as JSON (schema/shelf.schema.json)') },
      {
        option: '--refused FILE',
        help: say('write the refused rows with their reasons, and the shelf without them'),
      },
      { option: '--all', help: say('every row; without it only refused and changed ones') },
      ...COMMON,
    ],
    examples: [
      'shelf examples/shelves/lapwing.csv --to-json shelf.json',
      'shelf examples/shelves/lapwing-counted.csv --into examples/shelves/lapwing.csv --to-csv shelf.csv',
    ],
  },
  evidence: {
    usage: 'evidence',
    summary: say('the outside checks: published values beside ours, and every miss'),
    options: [
      { option: '--family ID', help: say('one interface family, such as nasal-cannula') },
      { option: '--misses', help: say('only what misses, with what would remove each miss') },
      { option: '--all', help: say('every row; without it only totals, interfaces and misses') },
      {
        option: '--svg FILE',
        help: say('also draw published fractions against ours, the rule of thumb beside'),
      },
      ...COMMON,
    ],
    examples: ['evidence', 'evidence --family nasal-cannula', 'evidence --misses --json'],
  },
} as const satisfies Readonly<Record<string, VerbHelp>>

export type VerbName = keyof typeof VERB_HELP

export const EXIT_CODE_HELP: readonly { readonly code: number; readonly meaning: string }[] = [
  { code: 0, meaning: say('done') },
  { code: 1, meaning: say('a bug in this program, or it is not installed') },
  { code: 2, meaning: say('wrong use: unknown verb, option or value') },
  { code: 3, meaning: say('bad case, shelf or file: every problem is listed') },
  {
    code: 4,
    meaning: say(
      'nothing on the shelf is likely to reach the goal, the named set-up is ruled out, or the store does not hold what a way needs',
    ),
  },
  { code: 5, meaning: say('a solid evidence table is missed') },
]

const RUN_FROM_CLONE = 'npm run -s oxwright --'

export function generalHelp(): string {
  return [
    say('{program}: which oxygen set-up for this patient, and what is really inhaled', {
      program: CLI_NAME,
    }),
    '',
    say('usage: {program} <verb> … (from the clone: {fromClone} <verb> …)', {
      program: CLI_NAME,
      fromClone: RUN_FROM_CLONE,
    }),
    '',
    ...twoColumns(Object.values(VERB_HELP).map((verb) => [verb.usage, verb.summary])),
    '',
    say('CASE is a JSON or YAML file (schema/case.schema.json), or - for standard input.'),
    say('{program} <verb> --help tells the options of a verb; {program} --version the version.', {
      program: CLI_NAME,
    }),
    '',
    say('examples'),
    ...Object.values(VERB_HELP).map((verb) => `  ${CLI_NAME} ${verb.examples[0]}`),
    '',
    say('exit codes'),
    ...twoColumns(EXIT_CODE_HELP.map(({ code, meaning }) => [String(code), meaning])),
    '',
    say(
      'Decision support for trained staff; not a monitor; only for patients who breathe by themselves.',
    ),
  ].join('\n')
}

export function verbHelp(name: VerbName): string {
  const verb: VerbHelp = VERB_HELP[name]
  return [
    say('usage: {program} {usage} [options]', { program: CLI_NAME, usage: verb.usage }),
    verb.summary,
    '',
    say('options'),
    ...twoColumns(verb.options.map(({ option, help }) => [option, help])),
    '',
    say('examples'),
    ...verb.examples.map((example) => `  ${CLI_NAME} ${example}`),
  ].join('\n')
}

function twoColumns(rows: readonly (readonly [string, string])[]): readonly string[] {
  const width = Math.max(...rows.map(([left]) => left.length))
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`)
}

/** Wrong uses, each with what is allowed. */
export type UsageFault =
  | { readonly kind: 'no-verb' }
  | { readonly kind: 'unknown-verb'; readonly got: string; readonly meant: string | undefined }
  | {
      readonly kind: 'unknown-option'
      readonly verb: string
      readonly got: string
      readonly meant: string | undefined
    }
  | { readonly kind: 'value-missing'; readonly option: string }
  | { readonly kind: 'value-not-wanted'; readonly option: string; readonly got: string }
  | {
      readonly kind: 'not-a-whole-number'
      readonly option: string
      readonly got: string
      readonly min: number
      readonly max: number
    }
  | {
      readonly kind: 'unknown-value'
      readonly option: string
      readonly got: string
      readonly allowed: readonly string[]
      readonly meant: string | undefined
    }
  | { readonly kind: 'given-twice'; readonly option: string }
  | { readonly kind: 'case-missing'; readonly verb: string }
  | {
      readonly kind: 'file-missing'
      readonly verb: string
      readonly file: 'transfer' | 'ward' | 'shelf' | 'stock'
    }
  | { readonly kind: 'option-missing'; readonly option: string; readonly verb: string }
  | { readonly kind: 'one-of-two'; readonly options: readonly [string, string] }
  | {
      readonly kind: 'not-a-quantity'
      readonly option: string
      readonly got: string
      readonly units: readonly string[]
    }
  | { readonly kind: 'not-a-time'; readonly option: string; readonly got: string }
  | { readonly kind: 'too-many-words'; readonly verb: string; readonly got: string }
  | { readonly kind: 'nothing-on-now' }
  | { readonly kind: 'room-air-on-now' }

export function usageText(fault: UsageFault): string {
  switch (fault.kind) {
    case 'no-verb':
      return say('no verb given')
    case 'unknown-verb':
      return suggesting(
        fault.meant,
        say('unknown verb “{got}” (allowed: {allowed})', {
          got: fault.got,
          allowed: Object.keys(VERB_HELP).join(', '),
        }),
      )
    case 'unknown-option':
      return suggesting(
        fault.meant,
        say('unknown option {got} of {verb}', { got: fault.got, verb: fault.verb }),
      )
    case 'value-missing':
      return say('{option} needs a value', { option: fault.option })
    case 'value-not-wanted':
      return say('{option} takes no value, got “{got}”', { option: fault.option, got: fault.got })
    case 'not-a-whole-number':
      return say('{option} {got} is no whole number from {min} to {max}', {
        option: fault.option,
        got: fault.got,
        min: fault.min,
        max: fault.max,
      })
    case 'unknown-value':
      return suggesting(
        fault.meant,
        say('{option}: unknown choice “{got}” (allowed: {allowed})', {
          option: fault.option,
          got: fault.got,
          allowed: fault.allowed.join(', '),
        }),
      )
    case 'given-twice':
      return say('{option} is given twice', { option: fault.option })
    case 'case-missing':
      return say('{verb} needs a case: a file, or - for standard input', { verb: fault.verb })
    case 'file-missing':
      if (fault.file === 'shelf')
        return say('{verb} needs a shelf file, or - for standard input', { verb: fault.verb })
      if (fault.file === 'stock')
        return say('{verb} needs a stock file, or - for standard input', { verb: fault.verb })
      return fault.file === 'transfer'
        ? say('{verb} needs a transfer file, or - for standard input', { verb: fault.verb })
        : say('{verb} needs a ward file, or - for standard input', { verb: fault.verb })
    case 'option-missing':
      return say('{verb} needs {option}', { verb: fault.verb, option: fault.option })
    case 'one-of-two':
      return say('give {first} or {second}, and not both', {
        first: fault.options[0],
        second: fault.options[1],
      })
    case 'not-a-quantity':
      return fault.units.length === 0
        ? say('{option} “{got}” is no number (a dot parts decimals, no unit)', {
            option: fault.option,
            got: fault.got,
          })
        : say('{option} “{got}” is no number with its unit (allowed: {units}; such as 137bar)', {
            option: fault.option,
            got: fault.got,
            units: fault.units.join(', '),
          })
    case 'not-a-time':
      return say('{option} “{got}” is no time of day such as 14:05', {
        option: fault.option,
        got: fault.got,
      })
    case 'too-many-words':
      return say('{verb} takes no more: “{got}” is too much', { verb: fault.verb, got: fault.got })
    case 'room-air-on-now':
      return say('room air is on now, and no device delivers it: name a set-up with --set-up')
    case 'nothing-on-now':
      return say(
        'the case says nothing of what is on now: add onNow to it, or name a set-up with --set-up',
      )
  }
}

function suggesting(meant: string | undefined, text: string): string {
  return meant === undefined ? text : say('{text}; did you mean {meant}?', { text, meant })
}

export const CLI_WORDS = {
  address: say('address'),
  seeHelp: say('{program} --help tells more', { program: CLI_NAME }),
  theCase: say('the case'),
  theShelf: say('the shelf'),
  theTransfer: say('the transfer file'),
  theWard: say('the ward file'),
  theStock: say('the stock file'),
  bug: say(
    'This is a bug in oxwright. Please report it with the command and the case that showed it:',
  ),
  goal: say('goal'),
  pressure: say('barometric pressure'),
  shelf: say('shelf'),
  sample: say('sample'),
  named: say('instead'),
  inhaled: say('one breath of the middle patient'),
  reachWritten: say('reach chart written to'),
  ribbonWritten: say('breath ribbon written to'),
  demandWritten: say('demand of the ward written to'),
  roomWritten: say('course of the room written to'),
  timelineWritten: say('timeline of the cylinders written to'),
  mind: say('mind'),
  table: say('set-ups'),
  ruledOut: say('ruled out'),
  ruledOutEach: say('ruled out, one by one'),
  guideline: say('guideline starting point beside ours'),
  assumed: say('assumed, because not given'),
  nothingAssumed: say('nothing: every value is given'),
  cautions: say('cautions'),
  toCheck: say('to check in the case'),
  onNow: say('on now'),
  equals: say(
    'rank 1 more than once: count as equal, ordered by harm, comfort, humidity, gas use and fewest changes',
  ),
  listAll: say('--all lists each'),
  columns: {
    rank: '',
    setUp: say('set-up'),
    fraction: say('inspired fraction'),
    saturation: say('saturation in %'),
    oxygen: say('oxygen, in L/min'),
    holds: say('holds until'),
    quantity: say('result'),
    value: '',
  },
} as const

/** "the case cannot be used as it stands" */
export function problemsHeadText(what: string): string {
  return say('{what} cannot be used as it stands', { what })
}

export function cannotReadText(path: string, reason: string): string {
  return say('cannot read {path}: {reason}', { path, reason })
}

export function cannotWriteText(path: string, reason: string): string {
  return say('cannot write {path}: {reason}', { path, reason })
}

export function progressText(done: number, total: number): string {
  return say('planning: {done} of {total} set-ups', { done, total })
}

export function ruledOutText(excluded: number, total: number): string {
  return say('{excluded} of {total} set-ups of this shelf', { excluded, total })
}

export function moreRowsText(shown: number, total: number): string {
  return say('{shown} of {total} ranked set-ups shown; --top N or --all shows more', {
    shown,
    total,
  })
}

export function drawsText(draws: number, seed: number): string {
  return say('{draws} patients drawn, seed {seed}', { draws, seed })
}

/** "Bed Heron 4, H-1042" */
export function whoText(bed: string | undefined, code: string | undefined): string {
  return [bed === undefined ? '' : say('bed {bed}', { bed }), code ?? '']
    .filter((part) => part !== '')
    .join(', ')
}
