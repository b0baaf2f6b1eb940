// How much room text takes, by an estimate wide enough for common system fonts, and where lines break. Leaves out real font metrics, which SVG text has not.
import { filledLines } from '../words/line-break.ts'

/** Mean advance of a letter in em, on the wide side for sans-serif. */
const EM_PER_LETTER = 0.56

export function textWidthPx(content: string, fontPx: number): number {
  return content.length * EM_PER_LETTER * fontPx
}

/** Lines no wider than the room. */
export function wrapped(
  content: string,
  room: { readonly widthPx: number; readonly fontPx: number },
): readonly string[] {
  return filledLines(content, (line) => textWidthPx(line, room.fontPx) <= room.widthPx)
}
