// Lists everything a source file imports: values, types, re-exports, dynamic imports, workers. Leaves out resolving packages.
import { existsSync } from 'node:fs'
import { join, posix } from 'node:path'
import { type ParsedFile, type SyntaxNode, calleeName, isNode, literalText, walk } from './ast.ts'

export interface FoundImport {
  readonly specifier: string
  readonly offset: number
}

const DECLARATIONS = ['ImportDeclaration', 'ExportNamedDeclaration', 'ExportAllDeclaration']

/** All imports of a file in source order; a dynamic import that is not a plain literal is reported as `<computed>`. */
export function importsOf(file: ParsedFile): FoundImport[] {
  const found: FoundImport[] = []
  walk(file.program, (node) => {
    const specifier = specifierOf(node)
    if (specifier !== undefined) found.push({ specifier, offset: node.start })
  })
  return found
}

function specifierOf(node: SyntaxNode): string | undefined {
  if (DECLARATIONS.includes(node.type)) return literalText(node['source'])
  if (node.type === 'ImportExpression') return literalText(node['source']) ?? '<computed>'
  if (node.type === 'TSImportType')
    return literalText(node['source']) ?? literalText(node['argument'])
  if (node.type === 'TSExternalModuleReference') return literalText(node['expression'])
  if (node.type === 'CallExpression' && calleeName(node['callee']) === 'require') {
    return firstArgument(node) ?? '<computed>'
  }
  const isUrl = node.type === 'NewExpression' && calleeName(node['callee']) === 'URL'
  return isUrl && isRelativeToThisFile(node) ? firstArgument(node) : undefined
}

function firstArgument(node: SyntaxNode): string | undefined {
  return Array.isArray(node['arguments']) ? literalText(node['arguments'][0]) : undefined
}

/** True for `new URL(…, import.meta.url)`, by which a bundler finds a worker. */
function isRelativeToThisFile(node: SyntaxNode): boolean {
  const second: unknown = Array.isArray(node['arguments']) ? node['arguments'][1] : undefined
  return isNode(second) && calleeName(second) === 'url'
}

/** The path from `root` that a relative specifier means, with any `?query` left off; it must exist. */
export function resolveRelative(options: {
  readonly root: string
  readonly from: string
  readonly specifier: string
}): string | undefined {
  const bare = options.specifier.replace(/\?.*$/, '')
  const path = posix.normalize(posix.join(posix.dirname(options.from), bare))
  return existsSync(join(options.root, path)) ? path : undefined
}

/** `react-dom/client` → `react-dom`; `@a/b/c` → `@a/b`; `node:fs/promises` stays under `node:`. */
export function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:*'
  const parts = specifier.split('/')
  return parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/')
}
