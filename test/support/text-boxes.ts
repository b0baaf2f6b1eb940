// Where the texts of a picture stand, by the estimate the pictures themselves use for widths. Leaves out real font metrics.
import { textWidthPx } from '../../src/pictures/measure.ts'
import { elementsIn, textOf, type XmlElement } from './xml.ts'

export interface TextBox {
  readonly content: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const ASCENT = 0.8
const DESCENT = 0.2
const USUAL_PX = 14

export function textBoxes(picture: XmlElement): readonly TextBox[] {
  return elementsIn(picture, 'text').map(({ element, dx, dy }) => {
    const fontPx = Number(element.attributes['font-size'] ?? USUAL_PX)
    const content = textOf(element)
    const width = textWidthPx(content, fontPx)
    const x = dx + Number(element.attributes['x'])
    const y = dy + Number(element.attributes['y'])
    const anchor = element.attributes['text-anchor'] ?? 'start'
    const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x
    return {
      content,
      left,
      right: left + width,
      top: y - ASCENT * fontPx,
      bottom: y + DESCENT * fontPx,
    }
  })
}

/** Pairs of texts that lie over each other. */
export function overlaps(boxes: readonly TextBox[]): readonly string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.content} | ${b.content}`),
  )
}

/** Texts that reach out of the picture. */
export function outside(boxes: readonly TextBox[], picture: XmlElement): readonly string[] {
  const widthPx = Number(picture.attributes['width'])
  const heightPx = Number(picture.attributes['height'])
  return boxes
    .filter((box) => box.left < 0 || box.top < 0 || box.right > widthPx || box.bottom > heightPx)
    .map((box) => box.content)
}
