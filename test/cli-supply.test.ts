// The gas verbs of the command line: answers, refusals, JSON against its schema. Leaves out whether the numbers are right, which src/supply tests.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { EXIT } from '../src/cli/exit-codes.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { cli } from './support/cli.ts'
import { ROOT } from './support/files.ts'
import { parseXml } from './support/xml.ts'

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  allowUnionTypes: true,
  strictRequired: false,
})

function faults(schema: string, value: unknown): readonly string[] {
  const id = `https://oxwright.invalid/schema/${schema}.schema.json`
  if (ajv.getSchema(id) === undefined) {
    const text = readFileSync(join(ROOT, 'schema', `${schema}.schema.json`), 'utf8')
    ajv.addSchema(JSON.parse(text) as object) // Safe: compiling it shows that it is a schema.
  }
  const validate = ajv.getSchema(id)
  if (validate === undefined) throw new Error(`no schema ${schema}`)
  void validate(value)
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message ?? ''}`)
}

const PLAIN = ['cylinder', '--water', '4.68', '--gauge', '2000psi', '--flow', '2', '--now', '13:50']

describe('oxwright cylinder', () => {
  it('gives clock times first, then what they rest on', () => {
    const { code, out, err } = cli(PLAIN)
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out.split('\n')[0]).toMatch(/^Change at \d\d:\d\d \(in 5 h \d+ min\)/)
    expect(out).toContain('what these numbers rest on')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('gives the same times in bar, psi and kPa, litres and cubic feet', () => {
    const first = (words: readonly string[]): string => cli(words).out.split('\n')[0] ?? ''
    const inBar = PLAIN.with(4, '137.89514586336722bar')
    expect(first(inBar)).toBe(first(PLAIN))
    expect(first([...PLAIN, '--units', 'psi', '--volume', 'ft3'])).toBe(first(PLAIN))
    expect(cli([...PLAIN, '--units', 'psi', '--volume', 'ft3']).out).toMatch(/[\d.]+ ft³ in it/)
  })

  it('says nothing in a unit that was not asked for, remarks and JSON neither', () => {
    const asked = ['--units', 'psi', '--volume', 'ft3', '--gauge-error', '5bar', '--used-at=-5']
    for (const words of [
      [...PLAIN, ...asked],
      [...PLAIN, ...asked, '--json'],
      ['transfer', 'examples/transfers/wren-short.yaml', '--now', '9:00', ...asked.slice(0, 4)],
      ['transfer', 'examples/transfers/wren-short.yaml', '--sheet', ...asked.slice(0, 4)],
    ]) {
      const { out } = cli(words)
      // Pressure of the air stays in kPa; a water volume is a size; a label is the ward's own.
      const mine = out.replaceAll(/(?:°C and|Water volume|1 ×|\d\.) [\d.]+ (?:kPa|L)/g, '')
      expect(mine, words.join(' ')).toMatch(/psi|ft³/)
      expect(mine.match(/.*\d\s(?:bar|kPa|L)(?![\w/]).*/g)).toBeNull()
    }
  })

  it('says of a closed valve that it gives nothing', () => {
    const { out } = cli([...PLAIN, '--closed'])
    expect(out).toContain('Change at 13:50 (in 0 min)')
    expect(out).toContain('The valve is closed')
  })

  it('draws what the set-up on now of a case draws', () => {
    const words = ['cylinder', '--water', '2', '--gauge', '137bar', '--now', '10:00']
    const { out } = cli([...words, '--case', 'examples/simple-mask.json'])
    expect(out).toMatch(/Drawn: about [\d.]+ L\/min of oxygen, [\d.]+ L\/min to [\d.]+ L\/min/)
  })

  it('takes the meter of the shelf named: one of another accuracy gives another spread', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-supply-'))
    const path = join(folder, 'shelf.json')
    const sources = DEMO_SHELF.sources.map((row) =>
      'meter' in row ? { ...row, meter: { ...row.meter, meterClass: 'low-flow' } } : row,
    )
    writeFileSync(path, JSON.stringify({ ...DEMO_SHELF, sources }))
    const words = ['cylinder', '--water', '2', '--gauge', '137bar', '--json']
    const ofCase = [...words, '--case', 'examples/simple-mask.json']
    const spread = (more: readonly string[]): number => {
      // Safe: the schema of this answer is tested below.
      const { drawn } = JSON.parse(cli([...ofCase, ...more]).out) as {
        readonly drawn: { readonly lowLpm: number; readonly highLpm: number }
      }
      return drawn.highLpm - drawn.lowLpm
    }
    expect(Math.abs(spread(['--shelf', path]) - spread([]))).toBeGreaterThan(0.1)
    rmSync(folder, { recursive: true })
  })

  it.each([
    [['cylinder'], 'cylinder needs --water'],
    [PLAIN.slice(0, 5), 'give --flow or --case'],
    [PLAIN.with(4, '2000'), 'no number with its unit'],
    [PLAIN.with(4, '2.000,5psi'), 'no number with its unit'],
    [PLAIN.with(6, '2,5'), 'is no number'],
    [PLAIN.with(8, '25:10'), 'no time of day'],
  ])('refuses wrong use: %j', (words, text) => {
    const { code, err } = cli(words)
    expect(code).toBe(EXIT.usage)
    expect(err).toContain(text)
  })

  it.each([
    PLAIN.with(4, '500bar'),
    PLAIN.with(2, '1500'),
    PLAIN.with(6, '1000'),
    [...PLAIN, '--leak=-1'],
  ])('refuses a number outside what there is', (...words) => {
    expect(cli(words.flat()).code).toBe(EXIT.badInput)
  })

  it('prints JSON that fits its schema, closed or open, with a case or a flow', () => {
    for (const more of [[], ['--closed'], ['--used-at=-10'], ['--read-at', '40']]) {
      const answer: unknown = JSON.parse(cli([...PLAIN, ...more, '--json']).out)
      expect(faults('cylinder', answer)).toEqual([])
    }
    const words = ['cylinder', '--water', '2', '--gauge', '137bar', '--now', '10:00', '--json']
    for (const file of ['simple-mask', 'on-air']) {
      const { out } = cli([...words, '--case', `examples/${file}.json`])
      expect(faults('cylinder', JSON.parse(out))).toEqual([])
    }
    expect(faults('cylinder', { format: 'oxwright-cylinder-1' })).not.toEqual([])
  })
})

const HERON_WAY = ['transfer', 'examples/transfers/heron-to-scanner.yaml', '--now', '14:05']

describe('oxwright transfer', () => {
  it('says first what to take, when to change, when it is empty', () => {
    const { code, out, err } = cli(HERON_WAY)
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out.split('\n')[0]).toMatch(/^Take \d × /)
    expect(out).toMatch(/Empty at \d\d:\d\d; the way ends at 15:01/)
    expect(out).toContain('stands still 20 min')
    expect(out).toContain('The cylinder stays outside the scanner room')
    expect(out).toMatch(/From the chain: [\d.]+ m of tube, [\d.]+ mm wide/)
    expect(out).toContain('not computed yet')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('prints the sheet: valve open, gauge read, spare, flow felt; secured; fire', () => {
    const { out } = cli([...HERON_WAY, '--sheet'])
    const boxes = out.split('\n').filter((line) => line.startsWith('[ ] '))
    expect(boxes).toHaveLength(10)
    expect(boxes[0]).toContain('Valve open')
    for (const word of ['Valve open', 'Gauge read', 'felt', 'Spare', 'secured', 'No smoking'])
      expect(boxes.join('\n')).toContain(word)
    expect(out).toContain('Invented: an example, no patient.')
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('writes the timeline of the cylinders', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-supply-'))
    const svg = join(folder, 'timeline.svg')
    expect(cli([...HERON_WAY, '--svg', svg]).out).toContain(
      `timeline of the cylinders written to ${svg}`,
    )
    expect(parseXml(readFileSync(svg, 'utf8')).name).toBe('svg')
    rmSync(folder, { recursive: true })
  })

  it('leaves with code 4 and says first that oxygen runs out, where the store does not suffice', () => {
    const { code, out } = cli(['transfer', 'examples/transfers/wren-short.yaml', '--now', '09:30'])
    expect(code).toBe(EXIT.nothingReaches)
    expect(out.split('\n')[0]).toContain('Oxygen runs out on the way')
  })

  it('shows what is inhaled on each leg where a case is named', () => {
    const words = ['transfer', 'examples/transfers/plover-by-air.yaml', '--now', '09:30']
    const { out } = cli([...words, '--case', 'examples/non-rebreather-mask.yaml'])
    expect(out).toMatch(/inhaled/)
    expect(out).toMatch(/helicopter .* 0\.\d+\n/)
    expect(out).toContain('gives 86 % of the oxygen pressure at the start')
  })

  it('prints JSON that fits its schema', () => {
    for (const file of ['heron-to-scanner', 'plover-by-air', 'wren-short']) {
      const words = ['transfer', `examples/transfers/${file}.yaml`, '--now', '10:00', '--json']
      for (const more of [[], ['--case', 'examples/simple-mask.json']])
        expect(faults('transfer-plan', JSON.parse(cli([...words, ...more]).out))).toEqual([])
    }
    expect(faults('transfer-plan', {})).not.toEqual([])
  })

  it('refuses a file that is none, with every problem', () => {
    expect(cli(['transfer']).err).toContain('transfer needs a transfer file')
    const { code, err } = cli(['transfer', 'examples/wards/heron.yaml'])
    expect(code).toBe(EXIT.badInput)
    expect(err).toContain('the transfer file cannot be used as it stands')
    expect(err).toContain('legs')
  })
})

describe('oxwright ward-demand', () => {
  it('says draw and design first, then every bed, one more patient, and what is not known', () => {
    const { code, out, err } = cli(['ward-demand', 'examples/wards/heron.yaml'])
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out.split('\n')[0]).toMatch(/^Heron draws [\d.]+ L\/min .* design formula gives 35\.5/)
    expect(out.match(/^\d+ +(?:H-|\s)/gm)).toHaveLength(18)
    expect(out).toContain('not known')
    expect(out).toContain('from memory')
    expect(out).toContain('It adds')
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('prints the drill for every failure, or one', () => {
    const all = cli(['ward-demand', 'examples/wards/plover.yaml', '--drill']).out
    for (const failure of ['mains power', 'pipeline oxygen', 'medical air', 'the blender'])
      expect(all).toContain(`${failure} fails`)
    const one = cli(['ward-demand', 'examples/wards/plover.yaml', '--failure', 'blender']).out
    expect(one).not.toContain('mains power fails')
    expect(one.indexOf('fails at once')).toBeLessThan(one.indexOf('still works'))
    for (const line of all.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('draws the demand beside what the pipework carries', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-supply-'))
    const svg = join(folder, 'demand.svg')
    const { out } = cli(['ward-demand', 'examples/wards/heron.yaml', '--svg', svg])
    expect(out).toContain(`demand of the ward written to ${svg}`)
    const drawn = readFileSync(svg, 'utf8')
    expect(parseXml(drawn).name).toBe('svg')
    expect(drawn).toContain('design flow by the formula, from memory: 35.5 L/min')
    rmSync(folder, { recursive: true })
  })

  it('takes the same seed to the same demand', () => {
    const out = (seed: string): string =>
      cli(['ward-demand', 'examples/wards/wren.yaml', '--json', '--seed', seed]).out
    expect(out('2')).toBe(out('2'))
    expect(out('3')).not.toBe(out('2'))
  })

  it('prints JSON that fits its schema', () => {
    for (const file of ['heron', 'plover', 'wren']) {
      const answer: unknown = JSON.parse(
        cli(['ward-demand', `examples/wards/${file}.yaml`, '--json']).out,
      )
      expect(faults('ward-demand', answer)).toEqual([])
    }
    expect(faults('ward-demand', {})).not.toEqual([])
  })

  it('refuses wrong use and a file that is none', () => {
    expect(cli(['ward-demand']).err).toContain('ward-demand needs a ward file')
    const wrong = cli(['ward-demand', 'examples/wards/heron.yaml', '--failure', 'blendr'])
    expect(wrong).toMatchObject({ code: EXIT.usage })
    expect(wrong.err).toContain('did you mean blender?')
    expect(cli(['ward-demand', 'examples/nasal-cannula.json']).code).toBe(EXIT.badInput)
  })
})

describe('oxwright room', () => {
  const SIDE_ROOM = ['room', '--volume', '30', '--oxygen', '60', '--air-changes']

  it('says first whether and when the limit is reached, then that it is a mean', () => {
    // The worked figures of a 30 m³ room with 60 L/min: 22.5 % at six changes, 29.4 % at one; 3.6 changes hold 23.5 %.
    const six = cli([...SIDE_ROOM, '6'])
    expect({ code: six.code, err: six.err }).toEqual({ code: EXIT.ok, err: '' })
    expect(six.out.split('\n')[0]).toBe('The mean stays below the limit')
    expect(six.out).toContain('settles at: 22.5 %')
    const one = cli([...SIDE_ROOM, '1', '--aside', '15']).out
    expect(one.split('\n')[0]).toMatch(/^reaches the limit after \d+ min/)
    expect(one).toContain('laid aside with 15 L/min running')
    expect(one).toContain('half a metre')
    expect(one).toContain('oxygen set free: 75 L/min')
    for (const line of one.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('writes the course, and JSON that fits its schema; an example of a place says that it is one', () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-supply-'))
    const svg = join(folder, 'room.svg')
    expect(cli([...SIDE_ROOM, '1', '--svg', svg]).out).toContain(`written to ${svg}`)
    expect(parseXml(readFileSync(svg, 'utf8')).name).toBe('svg')
    rmSync(folder, { recursive: true })
    const like = ['room', '--like', 'tent', '--oxygen', '30']
    expect(cli(like).out).toMatch(/not measured[^]*not of your room/)
    for (const words of [like, [...SIDE_ROOM, '0', '--limit', '0.25']])
      expect(faults('room', JSON.parse(cli([...words, '--json']).out))).toEqual([])
    expect(faults('room', {})).not.toEqual([])
  })

  it('refuses wrong use and what is out of range', () => {
    expect(cli(['room']).err).toContain('room needs --oxygen')
    expect(cli(['room', '--oxygen', '60']).err).toContain('room needs --volume')
    expect(cli([...SIDE_ROOM, '6', '--like', 'bay']).err).toContain('give --like or --volume')
    expect(cli([...SIDE_ROOM, '900']).code).toBe(EXIT.badInput)
  })
})

describe('oxwright stock', () => {
  it('says first what to order, then every item, the scarcest first', () => {
    const { code, out, err } = cli(['stock', 'examples/stocks/heron.yaml'])
    expect({ code, err }).toEqual({ code: EXIT.ok, err: '' })
    expect(out.split('\n')[0]).toMatch(/^Order now: Reservoir mask, adult; Nasal cannula, adult\.$/)
    expect(out).toContain('Invented')
    // 36 used in 7 days, 42 on hand; 8 in 7, 9 on hand.
    expect(out).toMatch(/Reservoir mask, adult +9 +1\.1 +7\.9 days/)
    expect(out).toMatch(/Nasal cannula, adult +42 +5\.1 +8\.2 days/)
    expect(out).toMatch(/Head box, infant +2 +0 +no use seen/)
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })

  it('prints JSON that fits its schema, and refuses a file that is none', () => {
    const { out } = cli(['stock', 'examples/stocks/heron.yaml', '--json'])
    expect(faults('stock-report', JSON.parse(out))).toEqual([])
    expect(faults('stock-report', {})).not.toEqual([])
    expect(cli(['stock']).err).toContain('stock needs a stock file')
    const { code, err } = cli(['stock', 'examples/wards/heron.yaml'])
    expect(code).toBe(EXIT.badInput)
    expect(err).toContain('the stock file cannot be used as it stands')
  })
})
