// The lines of a chain: every path from a gas outlet to the patient, as places of its parts. Leaves out what stands on them.
import { feederOf, placed } from './chain.ts'
import type { Chain } from './chain.ts'

/** Paths that end at the given part, each from the outlet on; a part fed by nobody begins one. */
export function linesTo(chain: Chain, at: number): readonly (readonly number[])[] {
  const { inlets } = placed(chain, at).part
  const feeders = inlets
    .map((_, index) => feederOf(chain, at, index))
    .filter((from) => from !== undefined && from < at)
  if (feeders.length === 0) return [[at]]
  return feeders.flatMap((from) => linesTo(chain, from ?? 0).map((line) => [...line, at]))
}

/** Lines that end at a patient. */
export function linesToPatients(chain: Chain): readonly (readonly number[])[] {
  return chain.parts.flatMap(({ part }, at) => (part.kind === 'patient' ? linesTo(chain, at) : []))
}

/** Whether a line reaches the interface through its air ports, so that it brings air and not the patient's own stream. */
export function entersByAirPorts(chain: Chain, line: readonly number[]): boolean {
  return line.some((from, i) => {
    const to = line[i + 1]
    if (to === undefined) return false
    const join = chain.joins.find((one) => one.from === from && one.to === to && one.at === 'inlet')
    return join !== undefined && placed(chain, to).part.inlets[join.index] === 'air-ports'
  })
}
