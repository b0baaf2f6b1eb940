// Blocks of SVG set one below the other. Leaves out what stands in them.
import { px } from './svg.ts'

/** Something drawn from its own top left corner, and the height it takes. */
export interface Block {
  readonly svg: string
  readonly heightPx: number
}

export function stacked(blocks: readonly Block[], topPx: number): Block {
  let y = topPx
  const parts = blocks.map(({ svg, heightPx }) => {
    const part = `<g transform="translate(0 ${px(y)})">${svg}</g>`
    y += heightPx
    return part
  })
  return { svg: parts.join(''), heightPx: y }
}
