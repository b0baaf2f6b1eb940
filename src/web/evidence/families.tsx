// How each interface stands against measurements, and the rule of thumb on the same rows. Leaves out single checks.
import type { FamilySummary, MissSummary } from '../../evidence/family-summary.ts'
import { FAMILY_NAMES } from '../../words/names.ts'
import {
  EVIDENCE_PAGE,
  judgedText,
  missCells,
  ruleNamesText,
} from '../../words/web-evidence-text.ts'

export function Families({ families }: { readonly families: readonly FamilySummary[] }) {
  return (
    <ul className="families">
      {families.map((summary) => (
        <li key={summary.family} className="family">
          <h3 className="family-name">{FAMILY_NAMES[summary.family]}</h3>
          {summary.hasMeasurement ? (
            <p>{judgedText(summary)}</p>
          ) : (
            <p>
              <strong>{EVIDENCE_PAGE.noMeasurement}.</strong> {EVIDENCE_PAGE.noMeasurementHelp}
            </p>
          )}
          {summary.ours === null ? null : <Figures summary={summary} ours={summary.ours} />}
          {summary.rule === null ? null : (
            <p className="check-fact">
              {EVIDENCE_PAGE.rule}: {ruleNamesText(summary.rule)}
            </p>
          )}
        </li>
      ))}
    </ul>
  )
}

function Figures(props: { readonly summary: FamilySummary; readonly ours: MissSummary }) {
  const { summary, ours } = props
  const { rule } = summary
  const lines = [
    { name: EVIDENCE_PAGE.ours, misses: ours },
    ...(rule === null
      ? []
      : [
          { name: EVIDENCE_PAGE.rule, misses: rule },
          { name: EVIDENCE_PAGE.oursSame, misses: rule.ours },
        ]),
  ]
  const { bias, rms, worst, count } = EVIDENCE_PAGE
  return (
    <table className="figures">
      <caption className="unseen">{FAMILY_NAMES[summary.family]}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">{EVIDENCE_PAGE.whose}</span>
          </th>
          {[bias, rms, worst, count].map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lines.map(({ name, misses }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {missCells(misses).map((cell, i) => (
              // oxlint-disable-next-line react/no-array-index-key -- the columns are fixed
              <td key={i}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
