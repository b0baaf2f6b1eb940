// The real command line on real cases: answers, exit codes, help, JSON and YAML, standard input, pictures. Leaves out whether the answers are right.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { EXIT } from '../src/cli/exit-codes.ts'
import { explain } from '../src/cli/run.ts'
import { BugError } from '../src/errors.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { EXIT_CODE_HELP, VERB_HELP } from '../src/words/cli-text.ts'
import { buildCli, cli, cliFromClone, cliLater, cliProcess } from './support/cli.ts'
import { parsedExample } from './support/examples.ts'
import { parseXml } from './support/xml.ts'

const folder = mkdtempSync(join(tmpdir(), 'oxwright-cli-'))
const inFolder = (name: string): string => join(folder, name)
const FEW = ['--draws', '64']
const CASE = 'examples/nasal-cannula.json'

/** One for each kind of goal, airway and age; test/cli-json.test.ts plans them all. */
const TOLD = [
  'nasal-cannula.json',
  'carbon-monoxide.json',
  'comfort.json',
  'fraction-goal.json',
  'laryngectomy.json',
  'no-reading.json',
  'preterm.json',
  'tracheostomy-mask.json',
]

beforeAll(buildCli)
afterAll(() => rmSync(folder, { recursive: true }))

/** The demo shelf with nothing but cannulas on it. */
function cannulaShelf(): string {
  const path = inFolder('cannulas.json')
  const interfaces = DEMO_SHELF.interfaces.filter(({ family }) => family === 'nasal-cannula')
  writeFileSync(path, JSON.stringify({ ...DEMO_SHELF, interfaces }))
  return path
}

describe('command line', () => {
  it.each(TOLD)('plans %s: emergency first, then the answer, then cautions', (file) => {
    const { code, out, err } = cli(['plan', `examples/${file}`, '--top', '5', ...FEW])
    expect(err).toBe('')
    expect(code).toBe(EXIT.ok)
    expect(out.split('\n')[0]).toBe('! In an emergency give oxygen first, calculate later.')
    expect(out).toContain('Not a monitor and not an alarm')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('says of a case without a reading that its chances come from averages', () => {
    const words = ['plan', 'examples/no-reading.json', ...FEW]
    expect(cli(words).out).toContain('no reading: from averages only')
    expect(cli(['plan', CASE, ...FEW]).out).not.toContain('from averages only')
  })

  it('tells what is on now in one honest line', () => {
    const { code, out } = cli(['breath', 'examples/simple-mask.json', ...FEW])
    expect(code).toBe(EXIT.ok)
    expect(out).toMatch(/about 0\.\d+, 0\.\d+–0\.\d+; printed 0\.\d+–0\.\d+/)
    expect(out).toMatch(/from the device now, \d+ %/)
  })

  it('sets another set-up beside it, and draws both', () => {
    const svg = inFolder('change.svg')
    const id = 'non-rebreather/adult@wall-15#15'
    const words = ['breath', 'examples/simple-mask.json', '--set-up', id, '--svg', svg, ...FEW]
    const { code, out } = cli(words)
    expect(code).toBe(EXIT.ok)
    expect(out).toContain('non-rebreather mask, adult, 15 L/min')
    expect(parseXml(readFileSync(svg, 'utf8')).name).toBe('svg')
  })

  it('writes the reach chart', () => {
    const svg = inFolder('reach.svg')
    expect(cli(['plan', CASE, '--svg', svg, ...FEW]).code).toBe(EXIT.ok)
    expect(parseXml(readFileSync(svg, 'utf8')).name).toBe('svg')
  })

  it('lists everything ruled out when asked, and otherwise counts it', () => {
    const brief = cli(['plan', CASE, ...FEW]).out
    const whole = cli(['plan', CASE, '--all', ...FEW]).out
    expect(brief).toContain('--all lists each')
    expect(whole).not.toContain('--all lists each')
    expect(whole.length).toBeGreaterThan(4 * brief.length)
  })

  it('reads standard input, YAML as well as JSON, to the same plan', () => {
    const words = ['plan', '-', '--json', ...FEW]
    const fromJson = cliProcess(words, JSON.stringify(parsedExample('nasal-cannula')))
    const fromYaml = cliProcess(words, stringify(parsedExample('nasal-cannula')))
    expect(fromJson.code).toBe(EXIT.ok)
    expect(fromYaml.out).toBe(fromJson.out)
    expect(cli(['plan', CASE, '--json', ...FEW]).out).toBe(fromJson.out)
  })

  it('plans on the ward’s own shelf, or on what one ward has', () => {
    const own = cli(['plan', CASE, '--shelf', cannulaShelf(), ...FEW])
    expect(own.out).not.toContain('demo shelf')
    expect(own.out).toContain('nasal cannula, adult')
    const ward = cli(['plan', CASE, '--ward', 'heron', ...FEW])
    expect(ward.code).toBe(EXIT.ok)
    const wrong = cli(['plan', CASE, '--ward', 'heorn', ...FEW])
    expect(wrong.code).toBe(EXIT.badInput)
    expect(wrong.err).toContain('heorn')
  })

  it('shows pressures in the unit asked for', () => {
    expect(cli(['plan', CASE, ...FEW]).out).toMatch(/barometric pressure: [\d.]+ kPa/)
    expect(cli(['plan', CASE, '--pressure', 'mmHg', ...FEW]).out).toMatch(
      /barometric pressure: \d+ mmHg/,
    )
    expect(cli(['plan', CASE, '--pressure', 'Torr', ...FEW]).out).toMatch(
      /barometric pressure: \d+ Torr/,
    )
  })

  it('shows progress on the error output alone, and only when asked', () => {
    const asked = cliProcess(['plan', CASE, '--progress', '--json', ...FEW])
    expect(asked.err).toMatch(/planning: \d+ of \d+ set-ups/)
    expect(() => JSON.parse(asked.out) as unknown).not.toThrow()
  })

  it('keeps standard output clean on the way from the clone', () => {
    const { code, out } = cliFromClone(['plan', CASE, '--json', ...FEW])
    expect(code).toBe(EXIT.ok)
    expect(() => JSON.parse(out) as unknown).not.toThrow()
  })

  it('takes the same seed to the same plan', () => {
    const plan = (seed: string): string => cli(['plan', CASE, '--json', '--seed', seed, ...FEW]).out
    expect(plan('3')).toBe(plan('3'))
    expect(plan('4')).not.toBe(plan('3'))
  })
})

describe('evidence on the command line', () => {
  it('counts, and shows rows when asked for', () => {
    const { code, out } = cli(['evidence'])
    expect(code).toBe(EXIT.ok)
    expect(out).toMatch(/\d+ rows from \d+ sources/)
    const family = cli(['evidence', '--family', 'simple-mask']).out
    expect(family).toContain('simple mask:')
    expect(family).not.toContain('face tent:')
    expect(family.length).toBeGreaterThan(cli(['evidence', '--misses']).out.indexOf('rows'))
  })
})

describe('exit codes', () => {
  it('are those that the help tells', () => {
    expect(EXIT_CODE_HELP.map(({ code }) => code)).toEqual(Object.values(EXIT))
  })

  it.each([
    [[], 'no verb given'],
    [['paln', 'x'], 'did you mean plan?'],
    [['plan'], 'plan needs a case'],
    [['plan', 'a', 'b'], '“b” is too much'],
    [['plan', CASE, '--topp', '3'], 'did you mean --top?'],
    [['plan', CASE, '--draws', '1.5'], 'no whole number'],
    [['evidence', '--family', 'mask'], 'unknown choice'],
    [['breath', 'examples/on-air.json'], 'room air is on now'],
    [['breath', 'examples/no-reading.json'], 'nothing of what is on now'],
  ])('are 2 for wrong use: %j', (words, text) => {
    const { code, out, err } = cliProcess(words)
    expect(code).toBe(EXIT.usage)
    expect(out).toBe('')
    expect(err).toContain(text)
  })

  it('are 3 for a bad case, with every problem: path, got, allowed, did you mean', () => {
    const good = parsedExample('nasal-cannula') as Record<string, object> // Safe: the examples are objects.
    const bad = {
      ...good,
      patient: { ...good['patient'], haemoglobinGpl: 12 },
      breathing: { state: 'rset' },
      hight: 170,
    }
    const { code, out, err } = cliProcess(['plan', '-'], JSON.stringify(bad))
    expect(code).toBe(EXIT.badInput)
    expect(out).toBe('')
    expect(err).toMatch(/patient\.haemoglobinGpl: haemoglobin 12 g\/L outside \d+–\d+ g\/L; did/)
    expect(err.replaceAll(/\s+/g, ' ')).toContain('did you mean 120 g/L?')
    expect(err).toContain('unknown choice “rset”')
    expect(err).toContain('hight')
  })

  it.each([
    ['{ "version": 1,', 'cannot be read'],
    ['version: 1\n  patient: x: y', 'cannot be read'],
    ['', 'must hold named fields'],
    ['version: 1\nversion: 1', 'cannot be read'],
  ])('are 3 for a text that is no case: %j', (text, said) => {
    const { code, err } = cliProcess(['plan', '-'], text)
    expect(code).toBe(EXIT.badInput)
    expect(err).toContain(said)
  })

  it('are 3 for a file or set-up that is not there', () => {
    expect(cli(['plan', 'nowhere.json'])).toMatchObject({ code: EXIT.badInput, out: '' })
    const words = [
      'breath',
      'examples/simple-mask.json',
      '--set-up',
      'simple-mask/adult@wall-15#66',
    ]
    const { code, err } = cli([...words, ...FEW])
    expect(code).toBe(EXIT.badInput)
    expect(err).toContain('did you mean simple-mask/adult@wall-15#6?')
  })

  it('are 4 when nothing on the shelf can reach the goal, and say what is missing', () => {
    const words = ['plan', 'examples/laryngectomy.json', '--shelf', cannulaShelf(), ...FEW]
    const { code, out } = cli(words)
    expect(code).toBe(EXIT.nothingReaches)
    expect(out).toContain('No set-up on this shelf suits this patient.')
    expect(out).toContain('Ruled out altogether: nasal cannula')
  })

  it('are 1 for a bug, with what is needed to find it', () => {
    const said: string[] = []
    const terminal = {
      out: (text: string) => void said.push(text),
      err: (text: string) => void said.push(text),
      errIsTty: false,
    }
    expect(explain(new BugError('planning/broken promise'), terminal)).toBe(EXIT.bug)
    expect(said.join()).toContain('planning/broken promise')
    expect(said.join()).toContain('This is a bug in oxwright')
  })
})

/** Options that name a file to be written. */
const WRITTEN = /^--(?:svg|pdf|to-csv|to-json|refused)$/

describe('help', () => {
  it('tells every verb, its options, examples and the exit codes', () => {
    const general = cliProcess(['--help'])
    expect(general.code).toBe(EXIT.ok)
    for (const [name, help] of Object.entries(VERB_HELP)) {
      expect(general.out).toContain(help.summary)
      const own = cli([name, '--help']).out
      for (const { option } of help.options) expect(own).toContain(option)
      for (const example of help.examples) expect(own).toContain(example)
    }
    for (const { meaning } of EXIT_CODE_HELP) expect(general.out).toContain(meaning)
  })

  it('names no option that a verb does not take, and leaves none out', async () => {
    const { VERBS } = await import('../src/cli/verbs.ts')
    for (const [name, help] of Object.entries(VERB_HELP)) {
      const told = help.options.map(({ option }) => option.slice(2).split(' ')[0] ?? '')
      // Safe: VERBS has exactly the names of VERB_HELP, which its type says.
      const { options } = VERBS[name as keyof typeof VERBS]
      expect(told.toSorted()).toEqual(Object.keys(options).toSorted())
    }
  })

  it('shows examples that run', async () => {
    const { VERBS } = await import('../src/cli/verbs.ts')
    const examples = Object.values(VERB_HELP).flatMap((help) => help.examples)
    const runnable = examples.filter((example) => !example.includes('<'))
    expect(runnable.length).toBeGreaterThan(5)
    for (const example of runnable) {
      const words = example
        .split(' ')
        .map((word, i, all) => (WRITTEN.test(all[i - 1] ?? '') ? inFolder(word) : word))
      // Safe: the first word of an example is a verb, as the run of it shows.
      const few = 'draws' in VERBS[words[0] as keyof typeof VERBS].options ? FEW : []
      expect(await cliLater([...words, ...few])).toMatchObject({ code: EXIT.ok, err: '' })
    }
  })

  it('tells the version of the package', () => {
    const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string } // Safe: npm requires a version.
    expect(cli(['--version']).out.trim()).toBe(`oxwright ${manifest.version}`)
  })
})
