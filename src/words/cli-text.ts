// What the command line says: help, headings, usage errors. Leaves out what the core and the pictures say.

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
  { option: '--json', help: 'print the whole answer as JSON (schemas in schema/)' },
  { option: '--progress', help: 'show progress even where the error output is no terminal' },
  { option: '--help', help: 'this text' },
]

const SHELF: readonly OptionHelp[] = [
  { option: '--shelf FILE', help: 'the ward’s own shelf, JSON or YAML (default: the demo shelf)' },
  { option: '--ward ID', help: 'only what this ward can take from its place' },
  { option: '--draws N', help: 'patients drawn for the spread, 64–8192 (default 512)' },
  { option: '--seed N', help: 'another sample of the same size (default 1)' },
]

/** Name, one-line summary and options of every verb; a verb without an entry cannot be typed. */
export const VERB_HELP = {
  plan: {
    usage: 'plan CASE',
    summary: 'rank the set-ups of a shelf for a case and its goal',
    options: [
      ...SHELF,
      { option: '--top N', help: 'rows of the table (default 10)' },
      { option: '--all', help: 'every ranked set-up, and each one ruled out with its reason' },
      { option: '--svg FILE', help: 'write the reach chart' },
      { option: '--pressure UNIT', help: 'kPa or mmHg (default kPa)' },
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
    summary: 'what the set-up on now really delivers, breath by breath',
    options: [
      {
        option: '--set-up ID',
        help: 'another set-up of the shelf, by the id that plan --json gives',
      },
      ...SHELF,
      { option: '--svg FILE', help: 'write the breath ribbon; with --set-up: before and after' },
      { option: '--pressure UNIT', help: 'kPa or mmHg (default kPa)' },
      ...COMMON,
    ],
    examples: [
      'breath examples/simple-mask.json',
      'breath examples/simple-mask.json --svg ribbon.svg',
      'breath examples/simple-mask.json --set-up non-rebreather/adult@wall-15#15 --svg change.svg',
    ],
  },
  evidence: {
    usage: 'evidence',
    summary: 'the outside checks: published values beside ours, and every miss',
    options: [
      { option: '--family ID', help: 'one interface family, such as nasal-cannula' },
      { option: '--misses', help: 'only what misses, with what would remove each miss' },
      { option: '--all', help: 'every row; without it only totals, interfaces and misses' },
      ...COMMON,
    ],
    examples: ['evidence', 'evidence --family nasal-cannula', 'evidence --misses --json'],
  },
} as const satisfies Readonly<Record<string, VerbHelp>>

export type VerbName = keyof typeof VERB_HELP

export const EXIT_CODE_HELP: readonly { readonly code: number; readonly meaning: string }[] = [
  { code: 0, meaning: 'done' },
  { code: 1, meaning: 'a bug in this program, or it is not installed' },
  { code: 2, meaning: 'wrong use: unknown verb, option or value' },
  { code: 3, meaning: 'bad case or shelf: every problem is listed' },
  { code: 4, meaning: 'nothing on the shelf is likely to reach the goal' },
  { code: 5, meaning: 'a solid evidence table is missed' },
]

const RUN_FROM_CLONE = 'npm run -s oxwright --'

export function generalHelp(): string {
  return [
    `${CLI_NAME}: which oxygen set-up for this patient, and what is really inhaled`,
    '',
    `usage: ${CLI_NAME} <verb> … (from the clone: ${RUN_FROM_CLONE} <verb> …)`,
    '',
    ...twoColumns(Object.values(VERB_HELP).map((verb) => [verb.usage, verb.summary])),
    '',
    'CASE is a JSON or YAML file (schema/case.schema.json), or - for standard input.',
    `${CLI_NAME} <verb> --help tells the options of a verb; ${CLI_NAME} --version the version.`,
    '',
    'examples',
    ...Object.values(VERB_HELP).map((verb) => `  ${CLI_NAME} ${verb.examples[0]}`),
    '',
    'exit codes',
    ...twoColumns(EXIT_CODE_HELP.map(({ code, meaning }) => [String(code), meaning])),
    '',
    'Decision support for trained staff; not a monitor; only for patients who breathe by themselves.',
  ].join('\n')
}

export function verbHelp(name: VerbName): string {
  const verb: VerbHelp = VERB_HELP[name]
  return [
    `usage: ${CLI_NAME} ${verb.usage} [options]`,
    verb.summary,
    '',
    'options',
    ...twoColumns(verb.options.map(({ option, help }) => [option, help])),
    '',
    'examples',
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
  | { readonly kind: 'too-many-words'; readonly verb: string; readonly got: string }
  | { readonly kind: 'nothing-on-now' }
  | { readonly kind: 'room-air-on-now' }

export function usageText(fault: UsageFault): string {
  switch (fault.kind) {
    case 'no-verb':
      return 'no verb given'
    case 'unknown-verb':
      return `unknown verb “${fault.got}” (allowed: ${Object.keys(VERB_HELP).join(', ')})${meant(fault.meant)}`
    case 'unknown-option':
      return `unknown option ${fault.got} of ${fault.verb}${meant(fault.meant)}`
    case 'value-missing':
      return `${fault.option} needs a value`
    case 'value-not-wanted':
      return `${fault.option} takes no value, got “${fault.got}”`
    case 'not-a-whole-number':
      return `${fault.option} ${fault.got} is no whole number from ${fault.min} to ${fault.max}`
    case 'unknown-value':
      return `${fault.option}: unknown choice “${fault.got}” (allowed: ${fault.allowed.join(', ')})${meant(fault.meant)}`
    case 'given-twice':
      return `${fault.option} is given twice`
    case 'case-missing':
      return `${fault.verb} needs a case: a file, or - for standard input`
    case 'too-many-words':
      return `${fault.verb} takes no more: “${fault.got}” is too much`
    case 'room-air-on-now':
      return 'room air is on now, and no device delivers it: name a set-up with --set-up'
    case 'nothing-on-now':
      return 'the case says nothing of what is on now: add onNow to it, or name a set-up with --set-up'
  }
}

function meant(suggestion: string | undefined): string {
  return suggestion === undefined ? '' : `; did you mean ${suggestion}?`
}

export const CLI_WORDS = {
  seeHelp: `${CLI_NAME} --help tells more`,
  problems: 'cannot be used as it stands',
  theCase: 'the case',
  theShelf: 'the shelf',
  bug: 'This is a bug in oxwright. Please report it with the command and the case that showed it:',
  goal: 'goal',
  pressure: 'barometric pressure',
  shelf: 'shelf',
  sample: 'sample',
  named: 'instead',
  inhaled: 'one breath of the middle patient',
  reachWritten: 'reach chart written to',
  ribbonWritten: 'breath ribbon written to',
  mind: 'mind',
  table: 'set-ups',
  ruledOut: 'ruled out',
  ruledOutEach: 'ruled out, one by one',
  guideline: 'guideline starting point beside ours',
  assumed: 'assumed, because not given',
  nothingAssumed: 'nothing: every value is given',
  cautions: 'cautions',
  toCheck: 'to check in the case',
  reading: 'reading',
  onNow: 'on now',
  equals:
    'rank 1 more than once: count as equal, ordered by harm, comfort, humidity, gas use and fewest changes',
  listAll: '--all lists each',
  columns: {
    rank: '',
    setUp: 'set-up',
    fraction: 'inspired fraction',
    saturation: 'saturation in %',
    oxygen: 'oxygen, in L/min',
    holds: 'holds until',
    quantity: 'result',
    value: '',
  },
} as const

export function cannotReadText(path: string, reason: string): string {
  return `cannot read ${path}: ${reason}`
}

export function cannotWriteText(path: string, reason: string): string {
  return `cannot write ${path}: ${reason}`
}

export function progressText(done: number, total: number): string {
  return `planning: ${done} of ${total} set-ups`
}

export function ruledOutText(excluded: number, total: number): string {
  return `${excluded} of ${total} set-ups of this shelf`
}

export function moreRowsText(shown: number, total: number): string {
  return `${shown} of ${total} ranked set-ups shown; --top N or --all shows more`
}

export function drawsText(draws: number, seed: number): string {
  return `${draws} patients drawn, seed ${seed}`
}

/** "Bed Heron 4, H-1042" */
export function whoText(bed: string | undefined, code: string | undefined): string {
  return [bed === undefined ? '' : `bed ${bed}`, code ?? '']
    .filter((part) => part !== '')
    .join(', ')
}
