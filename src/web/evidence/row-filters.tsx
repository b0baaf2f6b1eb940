// The choices that narrow the list of checks. Leaves out the list.
import { Input, Label, TextField } from 'react-aria-components'
import { QUANTITY_NAMES } from '../../words/evidence-text.ts'
import { FAMILY_NAMES } from '../../words/names.ts'
import { EVIDENCE_PAGE, GROUP_NAMES, RESULT_NAMES } from '../../words/web-evidence-text.ts'
import { FAMILY_IDS } from '../../kit/family-id.ts'
import type { RowOutcome } from '../../evidence/verdict.ts'
import { ChoiceField, choicesOf } from '../parts/choice-field.tsx'
import type { Choice } from '../parts/choice-field.tsx'
import { quantitiesOf, RESULTS, ROW_GROUPS, sourcesOf } from './filters.ts'
import type { Filters } from './filters.ts'

export interface RowFiltersProps {
  readonly outcomes: readonly RowOutcome[]
  readonly filters: Filters
  readonly onFilter: (filters: Filters) => void
}

export function RowFilters({ outcomes, filters, onFilter }: RowFiltersProps) {
  const choice = (name: keyof Filters, choices: readonly Choice[]) => (
    <ChoiceField
      field={`evidence.${name}`}
      label={EVIDENCE_PAGE[name]}
      value={filters[name]}
      onChoose={(value) => onFilter({ ...filters, [name]: value })}
      choices={choices}
      empty={EVIDENCE_PAGE.all}
    />
  )
  return (
    <div className="filters">
      {choice('result', choicesOf(RESULTS, RESULT_NAMES))}
      {choice('family', choicesOf(FAMILY_IDS, FAMILY_NAMES))}
      {choice('group', choicesOf(ROW_GROUPS, GROUP_NAMES))}
      {choice('quantity', choicesOf(quantitiesOf(outcomes), QUANTITY_NAMES))}
      {choice(
        'source',
        sourcesOf(outcomes).map((key) => ({ value: key, text: key })),
      )}
      <TextField
        className="field"
        value={filters.text}
        onChange={(text) => onFilter({ ...filters, text })}
      >
        <Label className="field-label">{EVIDENCE_PAGE.text}</Label>
        <div className="field-box">
          <Input className="number-input" type="search" autoComplete="off" spellCheck="false" />
        </div>
      </TextField>
    </div>
  )
}
