// The shelf as a spreadsheet: what is written reads back as the same shelf, every fault is named in its cell, and no bad row harms another. Leaves out the page and the command line.
import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import type { ErrorCode } from '../src/errors.ts'
import { columnsOf } from '../src/files/shelf-csv/columns.ts'
import { SHELF_CSV_HEADINGS } from '../src/files/shelf-csv/headings.ts'
import { readShelfCsv } from '../src/files/shelf-csv/read-shelf-csv.ts'
import { refusedCsv } from '../src/files/shelf-csv/refused-rows.ts'
import { EMPTY_SHELF, rowsWith } from '../src/files/shelf-csv/shelf-reading.ts'
import type { ShelfReading } from '../src/files/shelf-csv/shelf-reading.ts'
import { takeShelfCsv } from '../src/files/shelf-csv/take-shelf-csv.ts'
import { writeShelfCsv } from '../src/files/shelf-csv/write-shelf-csv.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import type { Shelf } from '../src/kit/shelf.ts'
import { KEYS, SOURCE_KINDS } from '../src/kit/shelf-rules.ts'
import { rowProblemText } from '../src/words/shelf-file-text.ts'
import { randomFullShelf } from './support/random-full-shelf.ts'
import { randomStream, seeded } from './support/seed.ts'

const DEMO_CSV = writeShelfCsv(DEMO_SHELF)
const fullShelf = fc.integer().map((seed) => randomFullShelf(randomStream(seed)))

/** A list that a shelf may leave out says no more when it is there and empty. */
function withoutEmptyLists(shelf: Shelf): object {
  const isEmpty = (value: unknown): boolean => Array.isArray(value) && value.length === 0
  const needed = Object.keys(EMPTY_SHELF)
  return Object.fromEntries(
    Object.entries(shelf).filter(([key, value]) => needed.includes(key) || !isEmpty(value)),
  )
}

function taken(shelf: Shelf, reading: ShelfReading): Shelf {
  const read = takeShelfCsv(shelf, reading)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.shelf
}

/** The same cells between other signs, written as spreadsheet programs do. */
function separated(csv: string, sign: string): string {
  const cells = csv.replace(/^\u{FEFF}/u, '').matchAll(/("(?:[^"]|"")*"|[^,"\r\n]*)(,|\r\n)/g)
  return [...cells]
    .map(([, cell = '', end = '']) => {
      const isBare = !cell.startsWith('"') && cell.includes(sign)
      return (isBare ? `"${cell}"` : cell) + (end === ',' ? sign : end)
    })
    .join('')
}

/** As a spreadsheet program set to German was seen to save it. */
function savedAbroad(csv: string): string {
  const { data } = Papa.parse<string[]>(csv.replace(/^\u{FEFF}/u, '').trimEnd())
  const cell = (text: string): string => {
    const shown = /^-?\d+\.\d+$/.test(text) ? text.replace('.', ',') : text
    return /[\s,;"]/.test(shown) ? `"${shown.replaceAll('"', '""')}"` : shown
  }
  return data.map((row) => `${row.map(cell).join(';')}\n`).join('')
}

/** The demo file with one cell changed. */
function withCell(id: string, heading: string, cell: string): string {
  const [head = '', ...rows] = DEMO_CSV.trimEnd().split('\r\n')
  const at = head.replace('\u{FEFF}', '').split(',').indexOf(heading)
  const changed = rows.map((row) => {
    const cells = [...`${row},`.matchAll(/("(?:[^"]|"")*"|[^,]*),/g)].map(([, one = '']) => one)
    return cells[1] === id ? cells.with(at, `"${cell.replaceAll('"', '""')}"`).join(',') : row
  })
  return [head, ...changed, ''].join('\r\n')
}

describe('the shelf as a spreadsheet', () => {
  it('has a column for every field of a shelf file', () => {
    const fields = (list: Parameters<typeof columnsOf>[0], kind?: string): readonly string[] => [
      ...new Set(columnsOf(list, kind).map(({ field }) => field.split('.')[0] ?? '')),
    ]
    const { ward, outlet, airMeter, tube, fitting, humidifier } = KEYS
    expect(fields('wards').toSorted()).toEqual([...ward].toSorted())
    expect(fields('interfaces').toSorted()).toEqual([...KEYS.interface].toSorted())
    expect(fields('humidifiers').toSorted()).toEqual([...humidifier].toSorted())
    expect(fields('outlets').toSorted()).toEqual([...outlet].toSorted())
    expect(fields('airMeters').toSorted()).toEqual([...airMeter].toSorted())
    expect(fields('tubes').toSorted()).toEqual([...tube].toSorted())
    expect(fields('fittings').toSorted()).toEqual([...fitting].toSorted())
    for (const kind of SOURCE_KINDS)
      expect(fields('sources', kind).toSorted()).toEqual([...KEYS[kind]].toSorted())
  })

  it('reads back the demo shelf, which changes nothing on it', () => {
    const reading = readShelfCsv(DEMO_CSV, DEMO_SHELF)
    expect(reading.headProblems).toEqual([])
    expect(rowsWith(reading, 'same')).toHaveLength(reading.rows.length)
    expect(taken(DEMO_SHELF, reading)).toEqual(DEMO_SHELF)
    expect(taken(EMPTY_SHELF, readShelfCsv(DEMO_CSV, EMPTY_SHELF))).toEqual(DEMO_SHELF)
  })

  it('reads back 1,000 random shelves by any separator, onto nothing and onto themselves', () => {
    fc.assert(
      fc.property(fullShelf, fc.constantFrom(',', ';', '\t'), (shelf, sign) => {
        const csv = separated(writeShelfCsv(shelf), sign)
        const fresh = readShelfCsv(csv, EMPTY_SHELF)
        expect(rowsWith(fresh, 'refused')).toEqual([])
        expect(withoutEmptyLists(taken(EMPTY_SHELF, fresh))).toEqual(withoutEmptyLists(shelf))
        const again = readShelfCsv(csv, shelf)
        expect(rowsWith(again, 'same')).toHaveLength(again.rows.length)
        expect(taken(shelf, again)).toEqual(shelf)
      }),
      seeded(1000),
    )
  })

  it('reads back what a program of a country with decimal commas saves, nothing changed', () => {
    // Opened, saved as xlsx and ods, and saved as CSV again by a spreadsheet program set to German: semicolons, quotes around cells with blanks, no mark, bare line ends.
    const saved = savedAbroad(DEMO_CSV)
    expect(saved).toContain('tubes;hose-22;"Breathing hose 22 mm 1.8 m";everywhere;24;')
    expect(saved).toContain(';"1,8";20;yes;')
    for (const text of [saved, saved.replaceAll('\n', '\r\n'), `\u{FEFF}sep=;\r\n${saved}`]) {
      const reading = readShelfCsv(text, DEMO_SHELF)
      expect(reading.headProblems).toEqual([])
      expect(rowsWith(reading, 'same')).toHaveLength(reading.rows.length)
      expect(taken(EMPTY_SHELF, readShelfCsv(text, EMPTY_SHELF))).toEqual(DEMO_SHELF)
    }
  })

  it('keeps a line break within quotes to its cell', () => {
    const csv = 'list;id;name\r\ntubes;hose-22;"Hose\r\nwith; two lines"\r\ntubes;tubing-2;Tube\r\n'
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(reading.rows.map(({ outcome }) => outcome)).toEqual(['changed', 'changed'])
    const names = taken(DEMO_SHELF, reading).tubes?.map(({ label }) => label)
    expect(names).toEqual(expect.arrayContaining(['Hose\r\nwith; two lines', 'Tube']))
  })

  it('writes no cell that a spreadsheet would run, and reads the label back', () => {
    const name = '=HYPERLINK("http://a.invalid";"x")'
    const shelf = { ...DEMO_SHELF, hospital: name }
    const csv = writeShelfCsv(shelf)
    expect(csv).not.toMatch(/[,\n"]=/)
    expect(taken(DEMO_SHELF, readShelfCsv(csv, DEMO_SHELF)).hospital).toBe(name)
  })

  it.each([
    ['tubing-2', 'count', 'twelve', 'NOT_A_NUMBER', '0–100000'],
    ['tubing-2', 'count', '12.5', 'COUNT_OUT_OF_RANGE', '0–100000'],
    ['tubing-2', 'count', '-1', 'COUNT_OUT_OF_RANGE', '0–100000'],
    ['tubing-2', 'count', '1.180', 'NUMBER_AMBIGUOUS', 'allowed: 1180)'],
    ['tubing-2', 'count', '1,180', 'NUMBER_AMBIGUOUS', 'allowed: 1180)'],
    ['bubble', 'water (mL)', '1.180', 'NUMBER_AMBIGUOUS', 'allowed: 1180, 1.1800)'],
    ['tubing-2', 'count', '', 'MISSING_FIELD', '0–100000'],
    ['tubing-2', 'bore (mm)', '04. Aug', 'NOT_A_NUMBER', '1–40 mm'],
    ['tubing-2', 'bore (mm)', '4.8 mm', 'NOT_A_NUMBER', '1–40 mm'],
    ['tubing-2', 'length (m)', '210', 'UNIT_SLIP_SUSPECTED', '0.02–30 m'],
    ['tubing-2', 'place', 'lapwing', 'UNKNOWN_CHOICE', 'everywhere, heron, plover, wren'],
    ['tubing-2', 'kind', 'hose', 'UNKNOWN_CHOICE', 'oxygen-tubing, breathing-hose'],
    ['tubing-2', 'heated', 'maybe', 'UNKNOWN_CHOICE', 'yes, no'],
    ['tubing-2', 'sizes', 'adult 4', 'CELL_NOT_FOR_ROW', 'length (m)'],
    ['tubing-2', 'inlet ends', 'nozzle', 'UNKNOWN_CHOICE', 'nipple'],
    ['tubing-2', 'name', '', 'MISSING_FIELD', 'name is missing'],
    ['tubing-2', 'list', 'hoses', 'UNKNOWN_CHOICE', 'tubes'],
    ['tubing-2', 'list', '', 'MISSING_FIELD', 'tubes'],
    ['tubing-2', 'id', '', 'MISSING_FIELD', 'id is missing'],
    ['tubing-2', 'id', 'Tubing 2', 'UNKNOWN_ID', 'did you mean tubing-2'],
    ['bubble', 'label to (L/min)', '400', 'FLOW_OUT_OF_RANGE', '0.005–100 L/min'],
    ['wall-15', 'marks (L/min)', '1,5', 'CELL_UNREADABLE', '0.5 | 1 | 2'],
    ['wall-15', 'marks (L/min)', '1;2;5', 'CELL_UNREADABLE', '0.5 | 1 | 2'],
    ['wall-15', 'marks (L/min)', '1 | 5 | 2', 'RANGE_REVERSED', 'marks 2'],
    ['wall-15', 'marks used (L/min)', '1 | 7.25', 'STEP_NOT_ON_METER', '1, 2, 3'],
    ['wall-15', 'used for', 'simple-mask | hat', 'UNKNOWN_CHOICE', 'nasal-cannula'],
    ['wall-15', 'scale kind', 'round', 'UNKNOWN_CHOICE', 'tube-compensated'],
    ['wall-dial', 'flush low (L/min)', '40', 'MISSING_FIELD', 'flush'],
    ['blender-30', 'fractions used', '28%', 'CELL_UNREADABLE', '0.5 | 1 | 2'],
    ['blender-30', 'air fails', 'stops', 'UNKNOWN_CHOICE', 'goes-on'],
    ['simple-mask', 'sizes', 'adult four', 'NOT_A_NUMBER', '0–100000'],
    ['simple-mask', 'sizes', 'adult: 4', 'UNKNOWN_CHOICE', 'adult'],
    ['simple-mask', 'sizes', 'adult', 'CELL_UNREADABLE', 'adult 4 (15 to 30)'],
    ['simple-mask', 'sizes', 'adult 4 | adult 5', 'DUPLICATE_ID', 'adult'],
    ['simple-mask', 'sizes', 'adult 4 (10 to 5)', 'RANGE_REVERSED', 'lower end'],
    ['simple-mask', 'sizes', 'adult 4 (40 to 30 kg)', 'RANGE_REVERSED', 'lower end'],
    ['simple-mask', 'sizes', 'adult 4 (from 900 kg)', 'WEIGHT_OUT_OF_RANGE', '0.3–400 kg'],
    ['simple-mask', 'valve settings', '0.28 at 4', 'SETTING_NOT_FOR_SET_UP', 'valve settings'],
    ['entrainment-mask', 'valve settings', '0.28 / 4', 'CELL_UNREADABLE', '0.24 at 2'],
    ['entrainment-mask', 'valve settings', '28 at 4', 'UNIT_SLIP_SUSPECTED', '0.28'],
    ['ventilator', 'modes', 'Steady', 'CELL_UNREADABLE', 'constant-flow: Steady'],
    ['heron', 'beds', 'many', 'NOT_A_NUMBER', '0–1000'],
  ] as const)('refuses %s with %s “%s” and says why', (id, heading, cell, code, text) => {
    const reading = readShelfCsv(withCell(id, heading, cell), DEMO_SHELF)
    const [refused, ...more] = rowsWith(reading, 'refused')
    expect(more).toEqual([])
    const problem = refused?.problems.find((one) => one.code === (code satisfies ErrorCode))
    expect(problem?.column.split(' ')[0]).toBe(heading.split(' ')[0])
    expect(refused?.problems.map(rowProblemText).join('; ')).toContain(text)
    expect(reading.rows[(refused?.line ?? 0) - 2]).toBe(refused)
    expect(rowsWith(reading, 'same')).toHaveLength(reading.rows.length - 1)
    expect(refused?.id).toBe(heading === 'id' ? cell || null : id)
    expect(taken(DEMO_SHELF, reading)).toEqual(DEMO_SHELF)
  })

  it.each([
    ['tubing-2', 'bore (mm)', '4,5', { boreMm: 4.5 }],
    ['tubing-2', 'length (m)', '1,125', { lengthM: 1.125 }],
    ['tubing-2', 'count', ' 12 ', { count: 12 }],
    ['tubing-2', 'heated', 'TRUE', { isHeated: true }],
    ['tubing-2', 'count', '0', { count: 0 }],
  ] as const)('takes %s with %s “%s”', (id, heading, cell, fields) => {
    const reading = readShelfCsv(withCell(id, heading, cell), DEMO_SHELF)
    const [changed, ...more] = rowsWith(reading, 'changed')
    expect(more).toEqual([])
    expect(changed?.changes.map(({ column }) => column)).toEqual([heading])
    const after = taken(DEMO_SHELF, reading).tubes?.find((row) => row.id === id)
    expect(after).toMatchObject(fields)
  })

  it('takes the weights on a label beside its flows, with one end or two', () => {
    const cell = 'child 6 (10 to 25 kg) | adult 4 (5 to 10) (from 40,5 kg)'
    const reading = readShelfCsv(withCell('simple-mask', 'sizes', cell), DEMO_SHELF)
    const mask = taken(DEMO_SHELF, reading).interfaces.find(({ id }) => id === 'simple-mask')
    expect(mask?.sizes).toEqual([
      { size: 'child', count: 6, fitsMinKg: 10, fitsMaxKg: 25 },
      { size: 'adult', count: 4, ratedMinLpm: 5, ratedMaxLpm: 10, fitsMinKg: 40.5 },
    ])
  })

  it('leaves what a file has no column for, so that a list of counts is enough', () => {
    const csv = 'list;id;count\ntubes;hose-22;3\n'
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(reading.rows).toMatchObject([
      { outcome: 'changed', changes: [{ column: 'count', before: '24', after: '3' }] },
    ])
    const hose = taken(DEMO_SHELF, reading).tubes?.find(({ id }) => id === 'hose-22')
    expect(hose).toEqual({ ...DEMO_SHELF.tubes?.find(({ id }) => id === 'hose-22'), count: 3 })
  })

  it('takes away what an empty cell no longer says, and names it', () => {
    const reading = readShelfCsv(withCell('bubble', 'label to (L/min)', ''), DEMO_SHELF)
    expect(rowsWith(reading, 'changed')).toMatchObject([
      { changes: [{ column: 'label to (L/min)', before: '10', after: '' }] },
    ])
  })

  it('refuses a row whose letters were lost in another encoding, and keeps the name there was', () => {
    const bytes = Buffer.from(
      'list;id;name\ntubes;hose-22;Schl\u{e4}uche\nwards;heron;Reiher\n',
      'latin1',
    )
    const reading = readShelfCsv(bytes.toString('utf8'), DEMO_SHELF)
    expect(reading.rows.map(({ outcome }) => outcome)).toEqual(['refused', 'changed'])
    expect(reading.rows[0]?.problems).toMatchObject([{ code: 'LETTERS_LOST', column: 'name' }])
    const whole = readShelfCsv(bytes.toString('latin1'), DEMO_SHELF)
    expect(whole.rows.map(({ outcome }) => outcome)).toEqual(['changed', 'changed'])
  })

  it('refuses both of two rows with one id, as neither is known to be right', () => {
    const twice = DEMO_CSV + 'tubes,hose-22,Hose\r\n'
    const reading = readShelfCsv(twice, DEMO_SHELF)
    const refused = rowsWith(reading, 'refused')
    expect(refused.map(({ id }) => id)).toEqual(['hose-22', 'hose-22'])
    expect(
      refused.every(({ problems }) => problems.some((one) => one.code === 'DUPLICATE_ID')),
    ).toBe(true)
  })

  it('refuses a row with something under a heading that is not known, and takes the others', () => {
    const csv = 'list,id,cuont\ntubes,hose-22,3\ntubes,tubing-2,\n'
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(reading.headProblems).toMatchObject([
      { code: 'UNKNOWN_FIELD', column: 'cuont', suggestion: 'count' },
    ])
    expect(reading.rows.map(({ outcome }) => outcome)).toEqual(['refused', 'same'])
  })

  it('refuses every row of a file without list or id, and loses none', () => {
    const reading = readShelfCsv('thing,number\nmask,4\nhose,5\n', DEMO_SHELF)
    expect(reading.headProblems.map(({ code }) => code)).toContain('MISSING_FIELD')
    expect(reading.rows.map(({ outcome, cells }) => [outcome, cells])).toEqual([
      ['refused', ['mask', '4']],
      ['refused', ['hose', '5']],
    ])
  })

  it('takes rows of a ward that comes with the same file', () => {
    const csv =
      'list,id,name,beds,place\ntubes,tubing-2,Tubing,,lapwing\nwards,lapwing,Lapwing,4,\n'
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(reading.rows.map(({ outcome }) => outcome)).toEqual(['changed', 'added'])
    expect(taken(DEMO_SHELF, reading).wards.at(-1)).toEqual({
      id: 'lapwing',
      name: 'Lapwing',
      beds: 4,
    })
  })

  it('gives refused rows back with their reason; mended, they are taken', () => {
    const bad = readShelfCsv(withCell('hose-22', 'count', '1,180'), DEMO_SHELF)
    const back = refusedCsv(bad)
    expect(back).toContain('allowed: 1180)')
    const again = readShelfCsv(back, DEMO_SHELF)
    expect(again.rows).toMatchObject([{ outcome: 'refused', id: 'hose-22' }])
    const mended = readShelfCsv(back.replace('"1,180"', '1180'), DEMO_SHELF)
    expect(mended.rows).toMatchObject([
      { outcome: 'changed', changes: [{ column: 'count', before: '24', after: '1180' }] },
    ])
  })

  it('keeps an open quote to its own row', () => {
    const lines = DEMO_CSV.split('\r\n')
    const csv = lines.with(30, `"${lines[30]}`).join('\r\n')
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(rowsWith(reading, 'refused').map(({ line }) => line)).toEqual([31])
    expect(rowsWith(reading, 'same')).toHaveLength(lines.length - 3)
  })

  it('does not let an open quote reach a later row whose cell begins with the separator', () => {
    const csv = 'list,id,count\ntubes,"hose-22,3\ntubes,tubing-2,4\nfittings,",x",5\n'
    const reading = readShelfCsv(csv, DEMO_SHELF)
    expect(reading.rows.map(({ outcome }) => outcome)).toEqual(['refused', 'changed', 'refused'])
    expect(reading.rows[0]?.cells).toEqual(['tubes,"hose-22,3'])
  })

  it('survives random changes of bytes: nothing is thrown, no other row is harmed, none is lost', () => {
    const lines = DEMO_CSV.trimEnd().split('\r\n')
    const bytes = Buffer.from(DEMO_CSV)
    const first = Buffer.byteLength(`${lines[0]}\r\n`)
    const all = readShelfCsv(DEMO_CSV, DEMO_SHELF)
      .rows.flatMap(({ cells }) => cells)
      .join('')
    const place = fc.integer({ min: first, max: bytes.length - 1 })
    fc.assert(
      fc.property(place, fc.integer({ min: 0, max: 255 }), (at, byte) => {
        const mutated = Buffer.from(bytes)
        mutated[at] = byte
        const reading = readShelfCsv(mutated.toString('utf8'), DEMO_SHELF)
        // A line end that goes joins two rows; an id that becomes another's clashes with that one.
        expect(rowsWith(reading, 'same').length).toBeGreaterThanOrEqual(lines.length - 3)
        expect(reading.rows.length).toBeGreaterThanOrEqual(lines.length - 2)
        const kept = reading.rows.flatMap(({ cells }) => cells).join('').length
        expect(kept).toBeGreaterThanOrEqual(all.length - 4)
        expect(() => taken(DEMO_SHELF, reading)).not.toThrow()
      }),
      seeded(200),
    )
  })

  it('reads any text at all without throwing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const reading = readShelfCsv(text, DEMO_SHELF)
        expect(taken(DEMO_SHELF, reading).wards.length).toBeGreaterThanOrEqual(3)
        expect(typeof refusedCsv(reading)).toBe('string')
      }),
      seeded(200),
    )
  })

  it('names every heading in few words, each once', () => {
    const headings = Object.values(SHELF_CSV_HEADINGS)
    expect(new Set(headings.map((heading) => heading.toLowerCase())).size).toBe(headings.length)
  })
})
