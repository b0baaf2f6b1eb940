// Which stretches of a line must not be parted at its end: a number and its unit, a range. Leaves out how paper or screen keeps them whole.

export interface TextRun {
  readonly text: string
  readonly isWhole: boolean
}

const UNIT = String.raw`(?:m?L\/min|mg\/L|mL|L|mm|m|kPa|bar|psi|cmH₂O|°C|%|min|h)`
/** “(0.1 L/min)”, “22 mm”, “88–92 %”, “28/min”, “1–15”, with the signs that touch them and the gap behind. */
const WHOLE = new RegExp(
  String.raw`\S*\d\S* ${UNIT}(?![\p{L}\d/])\S*\s?|\S*\d\/min\S*\s?|\S*\d–\d\S*\s?`,
  'gu',
)

/** The line in runs; together they are the line. */
export function wholeRuns(line: string): readonly TextRun[] {
  const runs: TextRun[] = []
  let at = 0
  for (const found of line.matchAll(WHOLE)) {
    if (found.index > at) runs.push({ text: line.slice(at, found.index), isWhole: false })
    runs.push({ text: found[0], isWhole: true })
    at = found.index + found[0].length
  }
  if (at < line.length) runs.push({ text: line.slice(at), isWhole: false })
  return runs
}
