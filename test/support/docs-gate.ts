// The documentation gates as functions of a folder: hazards name real tests, references list the keys in use, decisions name each dependency. Leaves out prose.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { GateReport } from './architecture-gate.ts'
import {
  type ParsedFile,
  type SyntaxNode,
  calleeName,
  keyName,
  isNode,
  literalText,
  parseFile,
  quasiText,
  walk,
} from './ast.ts'
import { filesUnder } from './files.ts'
import { type TableRow, tableRows } from './markdown.ts'

export const HAZARDS_AT_LEAST = 30
const HAZARD_COLUMNS = ['id', 'cause', 'harm', 'prevention', 'test']
const REFERENCE_COLUMNS = ['key', 'citation', 'DOI', 'what we took', 'how we know it']
const HOW_WE_KNOW = /^(seen|secondary|memory|derived|common-practice)\b/
const KEY = /\b[A-Z][A-Za-z]+(?:1[789]|20)\d\d[a-z]?\b/g
const BRACKETED_KEY = /\[([A-Z][A-Za-z]+(?:1[789]|20)\d\d[a-z]?)\b[^\]]*\]/g
const SOURCE_REMARK = /\bSources?:.*/g
const SOURCE_FIELDS = ['source', 'sources']
const CODE_FOLDERS = ['src', 'test'] as const

function read(options: { readonly root: string; readonly path: string }): string {
  const file = join(options.root, options.path)
  return existsSync(file) ? readFileSync(file, 'utf8') : ''
}

function emptyCells(options: {
  readonly rows: readonly TableRow[]
  readonly name: string
}): string[] {
  return options.rows.flatMap((row) =>
    [...row]
      .filter(([, cell]) => cell === '')
      .map(([column]) => `${options.name}: empty ${column} in ${[...row.values()].join(' | ')}`),
  )
}

function repeated(options: {
  readonly values: readonly string[]
  readonly name: string
}): string[] {
  const { values, name } = options
  return values
    .filter((value, at) => values.indexOf(value) !== at)
    .map((value) => `${name}: ${value} stands twice`)
}

/** Each hazard has an id, a cause, a harm, a prevention and at least one test that exists under that very name. */
export function hazardReport(root: string): GateReport {
  const rows = tableRows({
    markdown: read({ root, path: 'docs/hazards.md' }),
    columns: HAZARD_COLUMNS,
  })
  const name = 'docs/hazards.md'
  const ids = rows.map((row) => row.get('id') ?? '')
  const violations = [
    ...emptyCells({ rows, name }),
    ...repeated({ values: ids, name }),
    ...ids.filter((id) => !/^H\d{2,3}$/.test(id)).map((id) => `${name}: ${id} is no hazard id`),
    ...rows.flatMap((row) => hazardTestViolations({ root, row })),
  ]
  if (rows.length < HAZARDS_AT_LEAST)
    violations.push(`${name}: ${rows.length} hazards, at least ${HAZARDS_AT_LEAST} wanted`)
  return { examined: rows.length, violations }
}

function hazardTestViolations(options: {
  readonly root: string
  readonly row: TableRow
}): string[] {
  const id = options.row.get('id') ?? ''
  const named = [...(options.row.get('test') ?? '').matchAll(/`([^`]+)`/g)].map(
    ([, text = '']) => text,
  )
  if (named.length === 0) return [`docs/hazards.md: ${id} names no test`]
  return named.flatMap((text) => {
    const [path = '', ...title] = text.split(' › ')
    return testTitles({ root: options.root, path }).has(title.join(' › '))
      ? []
      : [`docs/hazards.md: ${id}: no such test: ${text}`]
  })
}

/** The titles of all tests and groups in a test file that are written as plain text. */
export function testTitles(options: {
  readonly root: string
  readonly path: string
}): ReadonlySet<string> {
  const titles = new Set<string>()
  if (!/\.test\.tsx?$/.test(options.path) || !existsSync(join(options.root, options.path)))
    return titles
  walk(parseFile(options).program, (node) => {
    const title =
      node.type === 'CallExpression' && isTestCall(node['callee']) ? firstText(node) : undefined
    if (title !== undefined) titles.add(title)
  })
  return titles
}

/** True for it, test, describe and what hangs on them: `it.each(rows)`, `describe.for(rows)`. */
function isTestCall(callee: unknown): boolean {
  if (!isNode(callee)) return false
  if (callee.type === 'CallExpression') return isTestCall(callee['callee'])
  if (callee.type === 'TaggedTemplateExpression') return isTestCall(callee['tag'])
  if (callee.type === 'MemberExpression') return isTestCall(callee['object'])
  return ['it', 'test', 'describe'].includes(calleeName(callee) ?? '')
}

function firstText(node: SyntaxNode): string | undefined {
  return Array.isArray(node['arguments']) ? literalText(node['arguments'][0]) : undefined
}

/** Each key cited in code is listed once with how we know it, and each listed key is in use. */
export function referenceReport(root: string): GateReport {
  const name = 'docs/references.md'
  const rows = tableRows({ markdown: read({ root, path: name }), columns: REFERENCE_COLUMNS })
  const keys = rows.map((row) => (row.get('key') ?? '').replaceAll('`', ''))
  const listed = new Set(keys)
  const files = CODE_FOLDERS.flatMap((folder) =>
    filesUnder({ root, folder, endings: ['.ts', '.tsx'] }),
  ).map((path) => parseFile({ root, path }))
  const violations = [
    ...emptyCells({ rows, name }),
    ...repeated({ values: keys, name }),
    ...rows
      .filter((row) => !HOW_WE_KNOW.test(row.get('how we know it') ?? ''))
      .map((row) => `${name}: ${row.get('key') ?? ''} does not say how we know it`),
    ...files.flatMap((file) => unlistedKeys({ file, listed })),
    ...unusedKeys({ root, keys }),
  ]
  if (rows.length === 0 || files.length === 0) violations.push(`${name}: nothing was examined`)
  return { examined: rows.length, violations }
}

function unlistedKeys(options: {
  readonly file: ParsedFile
  readonly listed: ReadonlySet<string>
}): string[] {
  const unlisted = citedKeys(options.file).filter((key) => !options.listed.has(key))
  return [...new Set(unlisted)].map(
    (key) => `${options.file.path}: cites ${key}, which docs/references.md does not list`,
  )
}

/** Keys in `source` fields, in brackets in comments, and after `Source:` there. */
export function citedKeys(file: ParsedFile): string[] {
  const keys = file.comments.flatMap(({ value }) => [
    ...[...value.matchAll(BRACKETED_KEY)].map(([, key = '']) => key),
    ...(value.match(SOURCE_REMARK) ?? []).flatMap((remark) => remark.match(KEY) ?? []),
  ])
  walk(file.program, (node, ancestors) => {
    const text = node.type === 'TemplateElement' ? quasiText(node) : literalText(node)
    const inSource = ancestors.some(
      ({ node: parent, field }) =>
        field === 'value' &&
        parent.type === 'Property' &&
        SOURCE_FIELDS.includes(keyName(parent) ?? ''),
    )
    if (text !== undefined && inSource) keys.push(...(text.match(KEY) ?? []))
  })
  return keys
}

function unusedKeys(options: {
  readonly root: string
  readonly keys: readonly string[]
}): string[] {
  const used = new Set<string>()
  for (const folder of CODE_FOLDERS) {
    const paths = filesUnder({
      root: options.root,
      folder,
      endings: ['.ts', '.tsx', '.csv', 'README.md'],
    })
    for (const path of paths) {
      for (const key of read({ root: options.root, path }).match(KEY) ?? []) used.add(key)
    }
  }
  return options.keys
    .filter((key) => !used.has(key))
    .map((key) => `docs/references.md: ${key} is listed but nothing uses it`)
}

/** Each package that package.json names stands in a decision record, in backticks. */
export function dependencyReport(root: string): GateReport {
  const parsed: unknown = JSON.parse(read({ root, path: 'package.json' }) || '{}')
  const names = ['dependencies', 'devDependencies'].flatMap((field) => {
    const group: unknown =
      typeof parsed === 'object' && parsed !== null ? Reflect.get(parsed, field) : undefined
    return typeof group === 'object' && group !== null ? Object.keys(group) : []
  })
  const decisions = filesUnder({ root, folder: 'docs/decisions', endings: ['.md'] })
    .map((path) => read({ root, path }))
    .join('\n')
  const violations = names
    .filter((name) => !decisions.includes(`\`${name}\``))
    .map((name) => `package.json: no decision record names ${name}`)
  if (names.length === 0) violations.push('package.json: nothing was examined')
  return { examined: names.length, violations }
}
