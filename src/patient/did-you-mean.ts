// Finds what a misspelt key or choice may have meant: edit distance over plain letters, and names people use instead. Leaves out translation.

/** Damerau–Levenshtein distance with adjacent swaps: the fewest single-letter insertions, deletions, changes and swaps. */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + change)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, at(beforeLast, j - 2) + 1)
      }
      row.push(best)
    }
    beforeLast = last
    last = row
  }
  return at(last, b.length)
}

function at(row: readonly number[], j: number): number {
  return row[j] ?? Number.POSITIVE_INFINITY
}

/** Other names by plain letters (`spo2`) and the choice each stands for (`saturationPercent`). */
export type Aliases = Readonly<Record<string, string>>

/** One choice in the neighbourhood of what was typed, or undefined when nothing is near. */
export function closest(options: {
  readonly typed: string
  readonly choices: readonly string[]
  readonly aliases?: Aliases
}): string | undefined {
  const typed = plain(options.typed)
  if (typed === '') return undefined
  const alias = aliasOf(options.aliases ?? {}, typed)
  if (alias !== undefined && options.choices.includes(alias)) return alias
  const sameStart = options.choices.filter((choice) => startsAlike(plain(choice), typed))
  if (sameStart.length === 1) return sameStart[0]
  return nearest(typed, options.choices)
}

/** Letters and digits only, in lower case. */
export function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '')
}

function aliasOf(aliases: Aliases, typed: string): string | undefined {
  return Object.hasOwn(aliases, typed) ? aliases[typed] : undefined
}

const PREFIX_LETTERS_MIN = 3

function startsAlike(choice: string, typed: string): boolean {
  const shorter = Math.min(choice.length, typed.length)
  return shorter >= PREFIX_LETTERS_MIN && choice.slice(0, shorter) === typed.slice(0, shorter)
}

/** At most a third of the letters, and always one, may differ. */
const LETTERS_PER_SLIP = 3

function nearest(typed: string, choices: readonly string[]): string | undefined {
  let best: string | undefined
  let bestDistance = Math.max(1, Math.floor(typed.length / LETTERS_PER_SLIP)) + 1
  for (const choice of choices) {
    const distance = editDistance(typed, plain(choice))
    if (distance < bestDistance) {
      best = choice
      bestDistance = distance
    }
  }
  return best
}
