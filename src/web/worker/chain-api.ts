// What the page asks the worker of chains for, across its border. Leaves out how it is carried.
import type { HumidityAnswer } from '../../humidity/humidity-of-path.ts'
import type { ShelfHumidityQuestion } from '../../planning/shelf-humidity.ts'
import type { Answer } from './core-api.ts'

export interface ChainApi {
  /** Null at flush, whose flow nobody knows. */
  readonly humidity: (question: ShelfHumidityQuestion) => Answer<HumidityAnswer | null>
}
