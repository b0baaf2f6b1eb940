// Parses JSON or YAML text of an input, with every fault of its form. Leaves out what stands in it.
import { parseDocument } from 'yaml'
import type { Problem } from '../errors.ts'
import { InputError } from './failure.ts'

/** YAML 1.2 holds JSON; what looks like JSON is read by the stricter reader, for its better messages. */
export function parsedText(what: string, text: string): unknown {
  return /^\s*[[{]/.test(text) ? parsedJson(what, text) : parsedYaml(what, text)
}

function parsedJson(what: string, text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (thrown) {
    if (!(thrown instanceof SyntaxError)) throw thrown
    throw new InputError(what, [unreadable(thrown.message)])
  }
}

function parsedYaml(what: string, text: string): unknown {
  const document = parseDocument(text, { uniqueKeys: true, merge: false })
  const problems = document.errors.map((error) => unreadable(firstLine(error.message)))
  if (problems.length > 0) throw new InputError(what, problems)
  return document.toJS()
}

function unreadable(reason: string): Problem {
  return { code: 'UNREADABLE_TEXT', path: '', value: reason }
}

function firstLine(message: string): string {
  return message.split('\n')[0] ?? message
}
