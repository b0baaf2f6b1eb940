// Exit codes of the command line, and which problem ends with which. Leaves out their meaning in words.

export const EXIT = {
  ok: 0,
  bug: 1,
  usage: 2,
  badInput: 3,
  nothingReaches: 4,
  evidenceMiss: 5,
} as const

export type ExitCode = (typeof EXIT)[keyof typeof EXIT]
