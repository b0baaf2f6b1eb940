// Reads a source file into a syntax tree and walks it. Leaves out types: the gates judge form only.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseSync } from 'oxc-parser'

/** One node of an ESTree as the gates see it: a kind, a place, and fields looked at by name. */
export interface SyntaxNode {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [field: string]: unknown
}

export interface ParsedFile {
  readonly path: string
  readonly text: string
  readonly program: SyntaxNode
  readonly comments: readonly { readonly value: string; readonly start: number }[]
}

/** Parses one file; a syntax error is the gate's failure, not something to pass over. */
export function parseFile(options: { readonly root: string; readonly path: string }): ParsedFile {
  const text = readFileSync(join(options.root, options.path), 'utf8')
  const result = parseSync(options.path, text)
  const [firstError] = result.errors
  if (firstError !== undefined) throw new Error(`${options.path}: ${firstError.message}`)
  // Safe: every ESTree node has type, start and end; other fields are read as unknown.
  const program = result.program as unknown as SyntaxNode
  return { path: options.path, text, program, comments: result.comments }
}

export function isNode(value: unknown): value is SyntaxNode {
  return (
    typeof value === 'object' && value !== null && typeof Reflect.get(value, 'type') === 'string'
  )
}

/** Where a node stands under its parents: nearest parent first. */
export type Ancestors = readonly { readonly node: SyntaxNode; readonly field: string }[]

/** Calls `visit` for each node with its ancestors, parents before children. */
export function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, ancestors: Ancestors) => void,
  ancestors: Ancestors = [],
): void {
  visit(node, ancestors)
  for (const [field, value] of Object.entries(node)) {
    const children = Array.isArray(value) ? value : [value]
    for (const child of children) {
      if (isNode(child)) walk(child, visit, [{ node, field }, ...ancestors])
    }
  }
}

/** The text of a string literal or of a template without holes; undefined for all else. */
export function literalText(node: unknown): string | undefined {
  if (!isNode(node)) return undefined
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value']
  if (node.type !== 'TemplateLiteral' || !Array.isArray(node['quasis'])) return undefined
  const [only, second] = node['quasis']
  return second === undefined && isNode(only) ? quasiText(only) : undefined
}

/** The cooked text of one piece of a template. */
export function quasiText(node: SyntaxNode): string | undefined {
  const value = node['value']
  if (typeof value !== 'object' || value === null) return undefined
  const cooked: unknown = Reflect.get(value, 'cooked')
  return typeof cooked === 'string' ? cooked : undefined
}

export function lineOf(options: { readonly text: string; readonly offset: number }): number {
  return options.text.slice(0, options.offset).split('\n').length
}

/** The name of an identifier or of a member expression's last part. */
export function calleeName(node: unknown): string | undefined {
  if (!isNode(node)) return undefined
  if (node.type === 'Identifier' && typeof node['name'] === 'string') return node['name']
  if (node.type === 'MemberExpression') return calleeName(node['property'])
  return undefined
}

/** The plain name of an object property's or class field's key. */
export function keyName(node: SyntaxNode): string | undefined {
  const key = node['key']
  if (!isNode(key)) return undefined
  if (key.type === 'Identifier' && node['computed'] !== true) return calleeName(key)
  return literalText(key)
}
