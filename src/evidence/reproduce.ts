// Turns a row into our value: formula, one breath, a change, several patterns or a sample of people. Leaves out judging.
import type { EvidenceRow } from './evidence-row.ts'
import { callFormula } from './formulas.ts'
import { peopleStatistic } from './people.ts'
import { quantityIn } from './quantities.ts'

/** Our value in the row's unit. */
export function reproduceRow(row: EvidenceRow): number {
  const { reproduce, quantity } = row
  switch (reproduce.by) {
    case 'formula':
      return callFormula(reproduce)
    case 'engine':
      return quantityIn(reproduce.engine, quantity)
    case 'change':
      return quantityIn(reproduce.to, quantity) - quantityIn(reproduce.from, quantity)
    case 'patterns': {
      const values = reproduce.engines.map((engine) => quantityIn(engine, quantity))
      if (reproduce.statistic === 'min') return Math.min(...values)
      if (reproduce.statistic === 'max') return Math.max(...values)
      return Math.max(...values) / Math.min(...values)
    }
    case 'people':
      return peopleStatistic(reproduce, quantity)
  }
}
