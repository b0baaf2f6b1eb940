// The sentence gate: text for people lives in src/words alone. Leaves out single terms and two-word labels in code, which are codes or data.
import {
  type Ancestors,
  type ParsedFile,
  type SyntaxNode,
  calleeName,
  isNode,
  keyName,
  lineOf,
  literalText,
  parseFile,
  quasiText,
  walk,
} from './ast.ts'
import type { GateReport } from './architecture-gate.ts'
import { filesUnder, isTestFile } from './files.ts'

/** Three words of letters in a row, as no code, unit, class list of one letter or path has them. */
const SENTENCE = /(?:^|[\s(«“"'])\p{L}[\p{L}’'-]*[,;:]? \p{L}[\p{L}’'-]*[,;:]? \p{L}[\p{L}’'-]+/u
/** Two words in a row: what is already a label when it stands in a page. */
const LABEL = /\p{L}{2,} \p{L}{2,}/u

/** Attributes of a page that no person reads. */
const MACHINE_ATTRIBUTES = [
  'className',
  'class',
  'd',
  'style',
  'viewBox',
  'points',
  'transform',
  'rel',
  'key',
  'id',
]
/** Errors that tell of a bug, with what must hold; bad input has codes instead. */
const BUG_ERRORS = ['BugError', 'Error', 'TypeError', 'RangeError']
/** Data fields that cite the outside, and the folders whose data may. */
const CITING_FIELDS = ['source', 'sources', 'citation', 'condition']
const CITING_FOLDERS = /^src\/(evidence|kit|physics|physiology|patient|planning)\//

/** Judges src/ under `root`, src/words and tests left out. Examining nothing is a violation. */
export function sentenceReport(root: string): GateReport {
  const files = filesUnder({ root, folder: 'src', endings: ['.ts', '.tsx'] })
    .filter((path) => !isTestFile(path) && !path.startsWith('src/words/'))
    .map((path) => parseFile({ root, path }))
  const violations = files.flatMap(sentencesIn)
  if (files.length === 0) violations.push('src: no file was examined')
  return { examined: files.length, violations }
}

/** What is typed into a command line as it stands: fields of src/words that hold it, and how else it begins. */
const TYPED_FIELDS = ['usage', 'examples', 'option']
const TYPED = /^(?:--|npm )/

/** Judges src/words under `root`: every text of two words or more stands in `say(…)`, so that it can be translated. */
export function unsaidReport(root: string): GateReport {
  const files = filesUnder({ root, folder: 'src/words', endings: ['.ts'] })
    .filter((path) => !isTestFile(path))
    .map((path) => parseFile({ root, path }))
  const violations = files.flatMap(unsaidIn)
  if (files.length === 0) violations.push('src/words: no file was examined')
  return { examined: files.length, violations }
}

function unsaidIn(file: ParsedFile): string[] {
  const violations: string[] = []
  walk(file.program, (node, ancestors) => {
    const text = ownText(node)
    if (text === undefined || !LABEL.test(text) || TYPED.test(text)) return
    const isFree = ancestors.some(({ node: parent, field }) => {
      if (field === 'arguments') return isSay(parent) || isBugReport(parent)
      return field === 'value' && TYPED_FIELDS.includes(keyName(parent) ?? '')
    })
    if (isFree) return
    const line = lineOf({ text: file.text, offset: node.start })
    violations.push(`${file.path}:${line}: not in say(): ${text.trim()}`)
  })
  return violations
}

function isSay(node: SyntaxNode): boolean {
  return node.type === 'CallExpression' && calleeName(node['callee']) === 'say'
}

function sentencesIn(file: ParsedFile): string[] {
  const violations: string[] = []
  walk(file.program, (node, ancestors) => {
    const text = textForPeople(node, ancestors)
    if (text === undefined || isFree({ file, node, ancestors })) return
    const line = lineOf({ text: file.text, offset: node.start })
    violations.push(`${file.path}:${line}: sentence outside src/words: ${text.trim()}`)
  })
  return violations
}

/** The node's text when it reads like language, else undefined. */
function textForPeople(node: SyntaxNode, ancestors: Ancestors): string | undefined {
  const text = ownText(node)
  if (text === undefined) return undefined
  const inPage = node.type === 'JSXText' || ancestors[0]?.node.type === 'JSXAttribute'
  return (inPage ? LABEL : SENTENCE).test(text) ? text : undefined
}

function ownText(node: SyntaxNode): string | undefined {
  if (node.type === 'TemplateLiteral') return templateText(node)
  if (node.type === 'JSXText') return typeof node['value'] === 'string' ? node['value'] : undefined
  return literalText(node)
}

/** A template with each hole read as a sign that parts words. */
function templateText(node: SyntaxNode): string {
  const pieces = Array.isArray(node['quasis']) ? node['quasis'].filter(isNode) : []
  return pieces.map((piece) => quasiText(piece) ?? '').join('#')
}

function isFree(options: {
  readonly file: ParsedFile
  readonly node: SyntaxNode
  readonly ancestors: Ancestors
}): boolean {
  const { file, ancestors } = options
  if (ancestors.some(({ node, field }) => field === 'arguments' && isBugReport(node))) return true
  if (
    CITING_FOLDERS.test(file.path) &&
    ancestors.some(({ node, field }) => field === 'value' && cites(node))
  )
    return true
  const attribute = ancestors.find(({ node }) => node.type === 'JSXAttribute')?.node
  return attribute !== undefined && MACHINE_ATTRIBUTES.includes(attributeName(attribute) ?? '')
}

function isBugReport(node: SyntaxNode): boolean {
  const name = calleeName(node['callee']) ?? ''
  if (node.type === 'CallExpression') return name === 'assert'
  return node.type === 'NewExpression' && BUG_ERRORS.includes(name)
}

function cites(node: SyntaxNode): boolean {
  return node.type === 'Property' && CITING_FIELDS.includes(keyName(node) ?? '')
}

function attributeName(node: SyntaxNode): string | undefined {
  const name = node['name']
  return isNode(name) && typeof name['name'] === 'string' ? name['name'] : undefined
}
