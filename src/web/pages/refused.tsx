// In place of an answer, everything that is wrong with what was typed, each leading to its field. Leaves out the fields.
import { flushSync } from 'react-dom'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { fieldOfPath } from '../case/case-input.ts'
import { goToField } from '../parts/field-id.ts'

export interface RefusedProps {
  readonly problems: readonly Problem[]
  /** Brings the form into sight. */
  readonly onGo: () => void
}

export function Refused({ problems, onGo }: RefusedProps) {
  const go = (problem: Problem): void => {
    flushSync(onGo)
    goToField(fieldOfPath(problem.path))
  }
  return (
    <div className="refused">
      <h3>{PAGE_WORDS.refusedHeading}</h3>
      <p>{PAGE_WORDS.refusedWhy}</p>
      <ul className="problems">
        {problems.map((problem) => (
          <li key={problem.code + problem.path}>
            <Button className="link-button" onPress={() => go(problem)}>
              {problemLineText(problem)}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  )
}
