// Finds what is said to people: the messages of every `say(…)` in src/words, and names in data that are translated as they stand. Leaves out translations.
import type { SyntaxNode } from '../test/support/ast.ts'
import { calleeName, isNode, keyName, lineOf, literalText, walk } from '../test/support/ast.ts'
import type { ParsedFile } from '../test/support/ast.ts'

export interface SaidMessage {
  readonly message: string
  readonly path: string
  readonly line: number
  /** Names of the values given with it; undefined where they are not written out at the call. */
  readonly given: readonly string[] | undefined
}

/** Fields of data that hold names in English, translated as they stand (`translated` of src/words/say.ts). */
const NAMES_IN_DATA: readonly { readonly folder: string; readonly field: string }[] = [
  { folder: 'src/kit/demo-shelf/', field: 'label' },
  { folder: 'src/evidence/', field: 'condition' },
]

/** Every message of a file. A call whose message is no plain text cannot be translated, and is thrown as a fault. */
export function messagesIn(file: ParsedFile): readonly SaidMessage[] {
  const found: SaidMessage[] = []
  const add = (node: SyntaxNode, message: string, given: readonly string[] | undefined): void => {
    const line = lineOf({ text: file.text, offset: node.start })
    found.push({ message, path: file.path, line, given })
  }
  const fields = NAMES_IN_DATA.filter(({ folder }) => file.path.startsWith(folder))
  walk(file.program, (node) => {
    if (node.type === 'CallExpression' && calleeName(node['callee']) === 'say') {
      if (!file.path.startsWith('src/words/')) return
      const message = messageOf(node)
      if (message === undefined) throw new Error(faultAt(file, node))
      add(node, message, givenNames(node))
    }
    if (node.type === 'Property' && fields.some(({ field }) => field === keyName(node))) {
      for (const text of textsOf(node['value'])) if (/\p{L}{2}/u.test(text)) add(node, text, [])
    }
  })
  return found
}

/** The text of a field, or each of those it chooses from. */
function textsOf(value: unknown): readonly string[] {
  const text = literalText(value)
  if (text !== undefined) return [text]
  if (!isNode(value) || value.type !== 'ConditionalExpression') return []
  return [...textsOf(value['consequent']), ...textsOf(value['alternate'])]
}

function messageOf(call: SyntaxNode): string | undefined {
  return Array.isArray(call['arguments']) ? literalText(call['arguments'][0]) : undefined
}

function faultAt(file: ParsedFile, node: SyntaxNode): string {
  const line = lineOf({ text: file.text, offset: node.start })
  return `${file.path}:${line}: say() takes its message as plain text, so that it can be translated`
}

function givenNames(call: SyntaxNode): readonly string[] | undefined {
  const values: unknown = Array.isArray(call['arguments']) ? call['arguments'][1] : undefined
  if (values === undefined) return []
  if (!isNode(values) || values.type !== 'ObjectExpression') return undefined
  const properties = Array.isArray(values['properties']) ? values['properties'].filter(isNode) : []
  const names = properties.map(keyName)
  return names.every((name) => name !== undefined) ? names : undefined
}
