// What a chain is asked for: interface, source, humidifier and what is set. Leaves out the parts between.
import type { SizeId } from '../kit/family-id.ts'
import { flushOf, metersOf, nominalLpm } from '../kit/flow-steps.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Humidification, ModeKind } from '../kit/shelf.ts'
import type { FlowStep, SourceRow } from '../kit/source-row.ts'
import { assert } from '../errors.ts'

export interface Wanted {
  /** Null: gas goes straight to a tracheostomy tube through whatever fitting lets breath out. */
  readonly interfaceId: string | null
  readonly size?: SizeId
  readonly sourceId: string
  readonly humidification: Humidification
  /** As set on the meter, blender or ventilator; where two meters feed one part, the sum. */
  readonly flowLpm: number
  readonly isFlush?: boolean
  /** Blended fraction, dial of a jet, setting of a valve. */
  readonly o2Fraction?: number
  /** Flow of the mask over a cannula. */
  readonly overFlowLpm?: number
  readonly mode?: ModeKind
}

/** A set-up of the plan as a wish for a chain. The set-up must come from a shelf. */
export function wantedOf(setUp: SetUp): Wanted {
  const { interfaceId, source, setO2Fraction, over } = setUp
  assert(interfaceId !== undefined, 'set-up of a shelf')
  return {
    interfaceId,
    size: setUp.size,
    sourceId: source.id,
    humidification: setUp.humidification,
    ...flowWanted(source, setUp.flow),
    ...(setO2Fraction === null ? {} : { o2Fraction: setO2Fraction }),
    ...(over === null ? {} : { overFlowLpm: nominalLpm(source, over.flow) ?? 0 }),
  }
}

/** At flush the most that may come, so that limits hold for it. */
export function flowWanted(source: SourceRow, flow: FlowStep): Pick<Wanted, 'flowLpm' | 'isFlush'> {
  if (flow.kind === 'scale') return { flowLpm: flow.flowLpm }
  const flush = flushOf(source)
  assert(flush !== null, 'flush step only on a meter with flush')
  return { flowLpm: flush.highLpm * metersOf(source), isFlush: true }
}
