// What must not stand before what, and what needs what on its line, as rows of data. Leaves out ends, flows and gases.
import type { Provenance } from '../units/provenance.ts'
import type { Trait } from './traits.ts'

/** Gas must not pass a part with the first trait and then, further on the same line, one with the second. */
export interface OrderRule extends Provenance {
  readonly code: OrderCode
  readonly before: Trait
  readonly after: Trait
}

export type OrderCode =
  | 'BUBBLE_BEFORE_JET'
  | 'BUBBLE_BEFORE_RESERVOIR'
  | 'EXCHANGER_WITH_HUMIDIFIER'
  | 'TWO_HUMIDIFIERS'
  | 'FILTER_GETS_WET'
  | 'TWO_Y_PIECES'

export const ORDER_RULES: readonly OrderRule[] = [
  {
    code: 'BUBBLE_BEFORE_JET',
    before: 'bubble',
    after: 'entraining-jet',
    known: 'common-practice',
  },
  {
    code: 'BUBBLE_BEFORE_RESERVOIR',
    before: 'bubble',
    after: 'reservoir',
    known: 'common-practice',
  },
  {
    code: 'EXCHANGER_WITH_HUMIDIFIER',
    before: 'active-humidifier',
    after: 'exchanger',
    known: 'common-practice',
  },
  {
    code: 'TWO_HUMIDIFIERS',
    before: 'active-humidifier',
    after: 'active-humidifier',
    known: 'common-practice',
  },
  {
    code: 'FILTER_GETS_WET',
    before: 'active-humidifier',
    after: 'filter',
    known: 'common-practice',
  },
  { code: 'TWO_Y_PIECES', before: 'y-piece', after: 'y-piece', known: 'common-practice' },
]

/** A line with a part of the first trait must also hold one of the second, on the side named. */
export interface NeedRule extends Provenance {
  readonly code: NeedCode
  readonly part: Trait
  readonly needs: Trait
  readonly side: 'before' | 'after'
}

export type NeedCode = 'VENTILATOR_WITHOUT_FILTER' | 'HIGH_FLOW_WITHOUT_HEATED'

export const NEED_RULES: readonly NeedRule[] = [
  {
    code: 'VENTILATOR_WITHOUT_FILTER',
    part: 'unfiltered',
    needs: 'filter',
    side: 'after',
    known: 'common-practice',
  },
  {
    code: 'HIGH_FLOW_WITHOUT_HEATED',
    part: 'high-flow-interface',
    needs: 'heated-humidifier',
    side: 'before',
    known: 'common-practice',
  },
]
