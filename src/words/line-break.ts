// Where a line of text may break: at blanks, but never between a number and its unit, nor before a mark. Leaves out how wide letters are.

const BREAK = / (?!(?:L\/min|%|kPa|mmHg|mL|min|kg)(?:[ ,;.)]|$)|\*$)/

/** Pieces that stay whole; joined by blanks they are the text again. */
export function piecesOf(text: string): readonly string[] {
  return text.split(BREAK)
}

/** Lines filled with pieces as long as they fit; a single piece that does not fit keeps its own line. */
export function filledLines(text: string, fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = []
  let line: string | undefined
  for (const piece of piecesOf(text)) {
    const longer: string = line === undefined ? piece : `${line} ${piece}`
    if (line === undefined || fits(longer)) {
      line = longer
    } else {
      lines.push(line)
      line = piece
    }
  }
  return line === undefined ? lines : [...lines, line]
}
