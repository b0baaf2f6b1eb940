// A strict reader of small XML texts, so that pictures can be tested by structure. Leaves out namespaces, comments and entities that pictures do not use.

export interface XmlElement {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly (XmlElement | string)[]
}

const NAME = /^[A-Za-z][\w:-]*/
const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
}

/** Throws where the text is not one well-formed element. */
export function parseXml(text: string): XmlElement {
  const reader = { text, at: 0 }
  const root = readElement(reader)
  if (reader.at !== text.length) throw new Error(`text after the root at ${reader.at}`)
  return root
}

interface Reader {
  readonly text: string
  at: number
}

function readElement(reader: Reader): XmlElement {
  expectText(reader, '<')
  const name = readName(reader)
  const attributes: Record<string, string> = {}
  for (;;) {
    skipBlanks(reader)
    if (takes(reader, '/>')) return { name, attributes, children: [] }
    if (takes(reader, '>')) break
    const key = readName(reader)
    expectText(reader, '="')
    if (Object.hasOwn(attributes, key)) throw new Error(`attribute ${key} twice in ${name}`)
    attributes[key] = unescaped(readUntil(reader, '"'))
    expectText(reader, '"')
  }
  const children: (XmlElement | string)[] = []
  while (!reader.text.startsWith('</', reader.at)) {
    if (reader.text.startsWith('<', reader.at)) children.push(readElement(reader))
    else children.push(unescaped(readUntil(reader, '<')))
  }
  expectText(reader, `</${name}>`)
  return { name, attributes, children }
}

function readName(reader: Reader): string {
  const found = NAME.exec(reader.text.slice(reader.at))?.[0]
  if (found === undefined) throw new Error(`no name at ${reader.at}`)
  reader.at += found.length
  return found
}

function readUntil(reader: Reader, end: string): string {
  const to = reader.text.indexOf(end, reader.at)
  if (to < 0) throw new Error(`no ${end} after ${reader.at}`)
  const found = reader.text.slice(reader.at, to)
  reader.at = to
  return found
}

function unescaped(text: string): string {
  if (text.includes('<') || /&(?!(?:amp|lt|gt|quot);)/.test(text)) {
    throw new Error(`unescaped text: ${text}`)
  }
  return text.replaceAll(/&\w+;/g, (entity) => ENTITIES[entity] ?? entity)
}

function skipBlanks(reader: Reader): void {
  while (/\s/.test(reader.text.charAt(reader.at))) reader.at++
}

function takes(reader: Reader, text: string): boolean {
  if (!reader.text.startsWith(text, reader.at)) return false
  reader.at += text.length
  return true
}

function expectText(reader: Reader, text: string): void {
  if (!takes(reader, text)) throw new Error(`expected ${text} at ${reader.at}`)
}

/** Every element of that name, outermost first, with the shifts of the groups around it. */
export function elementsIn(
  root: XmlElement,
  name: string,
): readonly { readonly element: XmlElement; readonly dx: number; readonly dy: number }[] {
  return found(root, name, 0, 0)
}

function found(
  element: XmlElement,
  name: string,
  dx: number,
  dy: number,
): { readonly element: XmlElement; readonly dx: number; readonly dy: number }[] {
  const shift = /^translate\((-?[\d.]+) (-?[\d.]+)\)$/.exec(element.attributes['transform'] ?? '')
  const x = dx + Number(shift?.[1] ?? 0)
  const y = dy + Number(shift?.[2] ?? 0)
  return [
    ...(element.name === name ? [{ element, dx: x, dy: y }] : []),
    ...element.children.flatMap((child) =>
      typeof child === 'string' ? [] : found(child, name, x, y),
    ),
  ]
}

export function textOf(element: XmlElement): string {
  return element.children
    .map((child) => (typeof child === 'string' ? child : textOf(child)))
    .join('')
}
