// How much room text takes, by an estimate wide enough for common system fonts, and where lines break. Leaves out real font metrics, which SVG text has not.

/** Mean advance of a letter in em, on the wide side for sans-serif. */
const EM_PER_LETTER = 0.56

export function textWidthPx(content: string, fontPx: number): number {
  return content.length * EM_PER_LETTER * fontPx
}

/** A blank, but not the one between a number and its unit. */
const BREAK = / (?!(?:L\/min|%|kPa|mmHg|mL|min|kg)(?:[ ,;.)]|$))/

/** Lines no wider than the room, broken at blanks; a single word wider than the room keeps its own line. */
export function wrapped(content: string, room: { widthPx: number; fontPx: number }): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of content.split(BREAK)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidthPx(longer, room.fontPx) > room.widthPx) {
      lines.push(line)
      line = word
    } else {
      line = longer
    }
  }
  return line === '' ? lines : [...lines, line]
}
