// What gas takes from the chain of parts, line by line, and where a number of the tube is from. Leaves out the chain itself, which the Chain page draws.
import type { ChainTaken, NoChainReason, TakenChain } from '../supply/chain-taken.ts'
import { totalOf, type ScannerTube } from '../supply/scanner-rule.ts'
import { flowText, numberText } from './number-text.ts'
import { say, translated } from './say.ts'

export const CHAIN_TAKEN_TEXT = {
  heading: () => say('From the chain of parts'),
  tubeNotKnown: () => say('not known; type its length'),
} as const

/** "From the chain: 2.1 m of tube, 4.8 mm wide." and what else counts. */
export function chainTakenLines(taken: ChainTaken): readonly string[] {
  if (taken.kind === 'none') return [noChainText(taken.reason, taken.lacking)]
  const { parts, tubes, meter, drivingLpm } = taken
  return [
    say('Chain of the shelf: {parts}.', { parts: parts.map(translated).join(' → ') }),
    ...(tubes.length === 0 ? [] : [tubeLine(tubes)]),
    ...(meter === null
      ? []
      : [say('From the chain: flowmeter {meter}.', { meter: translated(meter) })]),
    ...(drivingLpm === null
      ? []
      : [
          say('From the chain: {flow} drive the jet, and nothing else is drawn.', {
            flow: flowText(drivingLpm),
          }),
        ]),
    ...biasLines(taken),
  ]
}

function tubeLine(tubes: TakenChain['tubes']): string {
  const { length, bore } = tubeValues({ lengths: tubes })
  return say('From the chain: {length} m of tube, {bore} mm wide.', { length, bore })
}

function tubeValues(tube: Pick<ScannerTube, 'lengths'>) {
  const { lengthM, boreMm } = totalOf(tube)
  return { length: numberText(lengthM, 0.1), bore: numberText(boreMm, 0.1) }
}

function biasLines({ biasFlowAddsToUse }: TakenChain): readonly string[] {
  switch (biasFlowAddsToUse) {
    case null:
      return []
    case 'yes':
      return [say('The shelf says that this machine draws a bias flow besides: it must be typed.')]
    case 'no':
      return [say('The shelf says that no bias flow adds to what this machine draws.')]
    case 'unknown':
      return [say('The shelf does not say whether a bias flow adds to what this machine draws.')]
  }
}

function noChainText(reason: NoChainReason, lacking: readonly string[]): string {
  switch (reason) {
    case 'NOT_ON_SHELF':
      return say('Nothing taken from a chain: interface or source is not on the shelf in use.')
    case 'DOES_NOT_JOIN':
      return say('Nothing taken from a chain: what the shelf has does not join to this set-up.')
    case 'PARTS_MISSING':
      return say('Nothing taken from a chain: the shelf lacks {parts}.', {
        parts: lacking.map(translated).join(', '),
      })
  }
}

/** Where length and bore of the tube into a scanner room are from; null: nobody says. */
export function scannerTubeText(tube: ScannerTube | null): string {
  if (tube === null) return CHAIN_TAKEN_TEXT.tubeNotKnown()
  const { length, bore } = tubeValues(tube)
  if (tube.lengthFrom === 'chain')
    return say('from the chain: {length} m of tube, {bore} mm wide; a typed length wins', {
      length,
      bore,
    })
  switch (tube.boreFrom) {
    case 'typed':
      return say('typed: {length} m, {bore} mm wide', { length, bore })
    case 'chain':
      return say('typed: {length} m; from the chain: {bore} mm wide', { length, bore })
    case 'assumed':
      return say('typed: {length} m; assumed: {bore} mm wide', { length, bore })
  }
}
