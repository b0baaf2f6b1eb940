// One run of the command line: finds the verb, runs it, turns what is thrown into lines and an exit code. Leaves out what verbs do.
import { readFileSync } from 'node:fs'
import { isDomainError, problemOf } from '../errors.ts'
import { closest } from '../patient/did-you-mean.ts'
import {
  CLI_NAME,
  CLI_WORDS,
  generalHelp,
  problemsHeadText,
  usageText,
  verbHelp,
} from '../words/cli-text.ts'
import { LANGUAGES } from '../words/languages.ts'
import { problemText } from '../words/problem-text.ts'
import { oneOf, parseWords } from './arguments.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { FileError, InputError, UsageError } from './failure.ts'
import { bulleted } from './table.ts'
import type { Terminal } from './terminal.ts'
import type { Verb } from './verb.ts'
import { VERBS } from './verbs.ts'
import type { VerbName } from './verbs.ts'

/** Both this file and its bundle in dist/cli stand two folders below package.json. */
function packageVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8')
  const manifest: unknown = JSON.parse(text)
  const version =
    typeof manifest === 'object' && manifest !== null && 'version' in manifest
      ? manifest.version
      : undefined
  return String(version)
}

/** Runs the words after the program's name; everything thrown, now or later, becomes lines and a code. */
export function runCli(words: readonly string[], terminal: Terminal): ExitCode | Promise<ExitCode> {
  try {
    const code = runWords(words, terminal)
    return typeof code === 'number'
      ? code
      : code.catch((thrown: unknown) => explain(thrown, terminal))
  } catch (thrown) {
    return explain(thrown, terminal)
  }
}

function runWords(words: readonly string[], terminal: Terminal): ExitCode | Promise<ExitCode> {
  const [first, ...rest] = words
  if (first === undefined) throw new UsageError({ kind: 'no-verb' })
  if (first === '--help' || first === '-h' || first === 'help') {
    terminal.out(generalHelp())
    return EXIT.ok
  }
  if (first === '--version' || first === '-v') {
    terminal.out(`${CLI_NAME} ${packageVersion()}`)
    return EXIT.ok
  }
  return runVerb(verbNamed(first), rest, terminal)
}

function verbNamed(word: string): VerbName {
  if (isVerb(word)) return word
  const meant = closest({ typed: word, choices: Object.keys(VERBS) })
  throw new UsageError({ kind: 'unknown-verb', got: word, meant })
}

function isVerb(word: string): word is VerbName {
  return Object.hasOwn(VERBS, word)
}

function runVerb(
  name: VerbName,
  rest: readonly string[],
  terminal: Terminal,
): ExitCode | Promise<ExitCode> {
  const verb = VERBS[name]
  const words = parseWords(name, rest, verb.options)
  // Spoken before this file was loaded (main.ts); here it is only judged.
  oneOf(words, 'language', LANGUAGES)
  if (words.switches.has('help')) {
    terminal.out(verbHelp(name))
    return EXIT.ok
  }
  const most = verb.takesCase ? 1 : 0
  const tooMuch = words.positionals[most]
  if (tooMuch !== undefined)
    throw new UsageError({ kind: 'too-many-words', verb: name, got: tooMuch })
  if (words.positionals.length < most) throw missingFile(name, verb)
  return verb.run({ words, terminal, version: packageVersion() })
}

function missingFile(name: VerbName, { takes }: Verb): UsageError {
  if (takes === undefined) return new UsageError({ kind: 'case-missing', verb: name })
  return new UsageError({ kind: 'file-missing', verb: name, file: takes })
}

/** Everything thrown ends here: the input's fault, the user's, or ours. */
export function explain(thrown: unknown, terminal: Terminal): ExitCode {
  const say = (lines: readonly string[]): void => terminal.err(`${lines.join('\n')}\n`)
  if (thrown instanceof UsageError) {
    say([`${CLI_NAME}: ${usageText(thrown.fault)}`, CLI_WORDS.seeHelp])
    return EXIT.usage
  }
  if (thrown instanceof InputError) {
    const lines = thrown.problems.map((one) => withPath(one.path, problemText(one)))
    say([`${CLI_NAME}: ${problemsHeadText(thrown.what)}`, ...bulleted(lines)])
    return EXIT.badInput
  }
  if (thrown instanceof FileError) {
    say([`${CLI_NAME}: ${thrown.message}`])
    return EXIT.badInput
  }
  if (isDomainError(thrown)) {
    say([`${CLI_NAME}: ${withPath(thrown.path, problemText(problemOf(thrown)))}`])
    return EXIT.badInput
  }
  say([CLI_WORDS.bug, thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)])
  return EXIT.bug
}

function withPath(path: string, text: string): string {
  return path === '' ? text : `${path}: ${text}`
}
