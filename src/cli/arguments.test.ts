// Strict reading of the words of a command line. Leaves out verbs.
import { describe, expect, it } from 'vitest'
import { usageText } from '../words/cli-text.ts'
import { oneOf, parseWords, wholeNumber } from './arguments.ts'
import { UsageError } from './failure.ts'

const KINDS = { json: 'switch', shelf: 'text', seed: 'text', family: 'text' } as const

function faultOf(act: () => unknown): string {
  try {
    act()
  } catch (thrown) {
    if (thrown instanceof UsageError) return usageText(thrown.fault)
    throw thrown
  }
  throw new Error('nothing was thrown')
}

const read = (...words: readonly string[]) => parseWords('plan', words, KINDS)

describe('words of a command line', () => {
  it('are switches, values and the case', () => {
    const words = read('case.json', '--json', '--shelf', 'ward.yaml', '--seed=7')
    expect(words.switches.has('json')).toBe(true)
    expect(words.texts.get('shelf')).toBe('ward.yaml')
    expect(wholeNumber(words, 'seed', { min: 0, max: 9 })).toBe(7)
    expect(words.positionals).toEqual(['case.json'])
    expect(read('-', '--shelf', '-').texts.get('shelf')).toBe('-')
  })

  it.each([
    [['--jsno'], 'unknown option --jsno of plan; did you mean --json?'],
    [['--shelf'], '--shelf needs a value'],
    [['--shelf', '--json'], '--shelf needs a value'],
    [['--json=yes'], '--json takes no value, got “yes”'],
    [['--json', '--json'], '--json is given twice'],
    [['--constructor'], 'unknown option --constructor of plan'],
  ])('are refused when wrong: %j', (words, text) => {
    expect(faultOf(() => read(...words))).toBe(text)
  })

  it.each(['1.5', 'abc', '10', '1e1', '0x3', ' 4'])('take no number but a whole one: %s', (got) => {
    const words = read(`--seed=${got}`)
    const text = faultOf(() => wholeNumber(words, 'seed', { min: 0, max: 9 }))
    expect(text).toBe(`--seed ${got} is no whole number from 0 to 9`)
  })

  it('offer what may have been meant', () => {
    const words = read('--family', 'nasal-canula')
    expect(faultOf(() => oneOf(words, 'family', ['nasal-cannula', 'face-tent']))).toBe(
      '--family: unknown choice “nasal-canula” (allowed: nasal-cannula, face-tent); did you mean nasal-cannula?',
    )
  })
})
