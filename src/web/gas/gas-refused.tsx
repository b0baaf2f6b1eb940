// In place of an answer of Gas, everything that is wrong with what was typed, each leading to its field. Leaves out the fields.
import { Button } from 'react-aria-components'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { goToField } from '../parts/field-id.ts'
import type { FieldProblem } from './read-form.ts'

export function GasRefused({ problems }: { readonly problems: readonly FieldProblem[] }) {
  return (
    <div className="refused">
      <h2>{GAS_TEXT.refusedHeading()}</h2>
      <p>{GAS_TEXT.refusedWhy()}</p>
      <ul className="problems">
        {problems.map((problem) => (
          <li key={problem.field + problem.code + problem.path}>
            {problem.field === '' ? (
              problemLineText(problem)
            ) : (
              <Button className="link-button" onPress={() => goToField(problem.field)}>
                {problemLineText(problem)}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}
