// Which stretches of a line stay whole at its end. Leaves out paper and screen.
import { describe, expect, it } from 'vitest'
import { wholeRuns } from './whole-runs.ts'

const wholeIn = (line: string): readonly string[] =>
  wholeRuns(line)
    .filter(({ isWhole }) => isWhole)
    .map(({ text }) => text.trim())

describe('a line at its end', () => {
  it.each([
    ['Flowmeter 1–15 L/min – Tubing nipple', ['1–15 L/min']],
    ['100 mL/min (0.1 L/min)', ['100 mL/min', '(0.1 L/min)']],
    ['Never below 5 L/min: expired gas', ['5 L/min:']],
    ['Breathing hose 22 mm 0.5 m, heated', ['22 mm', '0.5 m,']],
    ['Saturation 88–92 %. Below: check', ['88–92 %.']],
    ['rate above 30/min: up to half', ['30/min:']],
    ['Blood gas within 30–60 minutes', ['30–60']],
    ['about 37 mg/L, 32–43 mg/L', ['37 mg/L,', '32–43 mg/L']],
    ['eingestellt auf 0,6; 15 L/min', ['15 L/min']],
    ['Stay 5 minutes, 8 of 10 patients, 2 hours', []],
    ['Look at the patient. Call for help.', []],
  ])('keeps number and unit together in %j', (line, whole) => {
    expect(wholeIn(line)).toEqual(whole)
    expect(
      wholeRuns(line)
        .map(({ text }) => text)
        .join(''),
    ).toBe(line)
  })
})
