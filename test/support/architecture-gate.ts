// The architecture gate as a function of a folder, so that it can be shown to fail on planted files. Leaves out types, which tsconfig.core.json proves.
import { readFileSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { join } from 'node:path'
import {
  type ParsedFile,
  type SyntaxNode,
  type Ancestors,
  calleeName,
  lineOf,
  parseFile,
  walk,
} from './ast.ts'
import { filesUnder, isTestFile } from './files.ts'
import { ENTRY_POINTS, IMPORT_LAW, IMPURE_NAMES, PURE_LAYERS, layerOf } from './import-law.ts'
import { type FoundImport, importsOf, packageOf, resolveRelative } from './imports.ts'

export interface GateReport {
  readonly examined: number
  readonly violations: readonly string[]
}

const CODE = ['.ts', '.tsx'] as const
const PLAIN_FILES = /\.(css|svg|json|png|woff2|ya?ml)$/
const OUTSIDE_IMPORTERS = ['test', 'bench', 'scripts'] as const

/** Judges src/ under `root`: imports, files nobody imports, purity, opening comments. Examining nothing is a violation. */
export function architectureReport(root: string): GateReport {
  const files = filesUnder({ root, folder: 'src', endings: CODE }).map((path) =>
    parseFile({ root, path }),
  )
  const violations = [
    ...files.flatMap((file) => importViolations({ root, file })),
    ...orphanViolations({ root, files }),
    ...files.flatMap(purityViolations),
    ...files.flatMap(openingViolations),
  ]
  if (files.length === 0) violations.push('src: no file was examined')
  return { examined: files.length, violations }
}

function at(file: ParsedFile, offset: number): string {
  return `${file.path}:${lineOf({ text: file.text, offset })}`
}

function importViolations(options: { readonly root: string; readonly file: ParsedFile }): string[] {
  const { root, file } = options
  const layer = layerOf(file.path)
  if (layer === undefined) return [`${file.path}: stands in no layer of the import law`]
  return importsOf(file).flatMap((found) => {
    const reason = reasonAgainst({ root, file, found })
    return reason === undefined
      ? []
      : [`${at(file, found.offset)}: ${layer} imports ${found.specifier}: ${reason}`]
  })
}

function reasonAgainst(options: {
  readonly root: string
  readonly file: ParsedFile
  readonly found: FoundImport
}): string | undefined {
  const { specifier } = options.found
  if (specifier === '<computed>') return 'a dynamic import must name its file'
  return specifier.startsWith('.') ? reasonAgainstFile(options) : reasonAgainstPackage(options)
}

function reasonAgainstFile(options: {
  readonly root: string
  readonly file: ParsedFile
  readonly found: FoundImport
}): string | undefined {
  const { root, file, found } = options
  const target = resolveRelative({ root, from: file.path, specifier: found.specifier })
  if (target === undefined) return 'no such file (write the extension)'
  if (isTestFile(file.path) && /^(test\/support|examples)\//.test(target)) return undefined
  if (file.path.startsWith('src/cli/') || file.path.startsWith('src/web/')) {
    if (/^(examples\/|package\.json$)/.test(target)) return undefined
  }
  const from = layerOf(file.path)
  const to = layerOf(target)
  if (from === undefined || to === undefined) return 'outside the layers of src'
  if (isTestFile(target)) return 'a test is not for importing'
  if (from === to || IMPORT_LAW[from].layers.includes(to)) return undefined
  return `${from} may not import ${to}`
}

function reasonAgainstPackage(options: {
  readonly file: ParsedFile
  readonly found: FoundImport
}): string | undefined {
  const { file, found } = options
  const layer = layerOf(file.path)
  if (layer === undefined || isTestFile(file.path)) return undefined
  const name = isBuiltin(found.specifier) ? 'node:*' : packageOf(found.specifier)
  return IMPORT_LAW[layer].packages.includes(name)
    ? undefined
    : `${layer} may not use the package ${name}`
}

function orphanViolations(options: {
  readonly root: string
  readonly files: readonly ParsedFile[]
}): string[] {
  const { root, files } = options
  const outside = OUTSIDE_IMPORTERS.flatMap((folder) => filesUnder({ root, folder, endings: CODE }))
    .filter((path) => !path.startsWith('test/fixtures/'))
    .map((path) => parseFile({ root, path }))
  const importers = [...files.filter((file) => !isTestFile(file.path)), ...outside]
  const imported = new Set([...ENTRY_POINTS, ...pageScripts(root)])
  for (const file of importers) {
    for (const { specifier } of importsOf(file)) {
      const target = resolveRelative({ root, from: file.path, specifier })
      if (target !== undefined && target !== file.path) imported.add(target)
    }
  }
  return files
    .filter(
      (file) => !isTestFile(file.path) && !file.path.endsWith('.d.ts') && !imported.has(file.path),
    )
    .map((file) => `${file.path}: nobody imports it`)
}

/** Scripts that the pages of src/web start. */
function pageScripts(root: string): string[] {
  return filesUnder({ root, folder: 'src/web', endings: ['.html'] }).flatMap((page) => {
    const html = readFileSync(join(root, page), 'utf8')
    return [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"/g)].flatMap(([, source = '']) => {
      const specifier = source.startsWith('/') ? `.${source}` : source
      return resolveRelative({ root, from: page, specifier }) ?? []
    })
  })
}

function purityViolations(file: ParsedFile): string[] {
  const layer = layerOf(file.path)
  if (layer === undefined || !PURE_LAYERS.includes(layer) || isTestFile(file.path)) return []
  const violations: string[] = []
  walk(file.program, (node, ancestors) => {
    const name = impureName(node, ancestors)
    if (name !== undefined)
      violations.push(`${at(file, node.start)}: ${layer} is pure but uses ${name}`)
  })
  return violations
}

function impureName(node: SyntaxNode, ancestors: Ancestors): string | undefined {
  if (node.type === 'MemberExpression') {
    const path = `${calleeName(node['object']) ?? ''}.${calleeName(node['property']) ?? ''}`
    return path === 'Math.random' ? path : undefined
  }
  const name = node.type === 'Identifier' ? calleeName(node) : undefined
  if (name === undefined || !IMPURE_NAMES.includes(name)) return undefined
  const [parent] = ancestors
  const isOnlyALabel =
    parent !== undefined &&
    ['property', 'key'].includes(parent.field) &&
    parent.node['computed'] !== true &&
    parent.node['shorthand'] !== true
  return isOnlyALabel ? undefined : name
}

function openingViolations(file: ParsedFile): string[] {
  if (PLAIN_FILES.test(file.path)) return []
  const [first = '', second = ''] = file.text.split('\n')
  const opening = first.startsWith('#!') ? second : first
  return opening.startsWith('// ')
    ? []
    : [`${file.path}: does not open with a line saying what it models`]
}
