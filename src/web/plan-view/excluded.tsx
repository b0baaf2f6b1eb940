// What was ruled out, grouped by reason; each set-up answers why not, with what would change it. Leaves out ranked rows.
import type { ExcludedSetUp, Plan } from '../../planning/plan-types.ts'
import { excludedGroups, excludedGroupText } from '../../words/plan-text.ts'
import { reasonText } from '../../words/remark-text.ts'
import { setUpText } from '../../words/set-up-text.ts'
import { DETAIL_WORDS } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'

export function Excluded({ plan }: { readonly plan: Plan }) {
  return (
    <section className="section" aria-labelledby="excluded-heading">
      <h3 id="excluded-heading">{DETAIL_WORDS.ruledOut}</h3>
      {plan.excluded.length === 0 ? <p>{DETAIL_WORDS.nothingRuledOut}</p> : null}
      {excludedGroups(plan).map((group) => (
        <Fold key={group.code} heading={excludedGroupText(group)}>
          <dl className="excluded">
            {ofGroup(plan, group.code).map((one) => (
              <div key={one.id}>
                <dt>{setUpText(one.setUp)}</dt>
                <dd>{one.reasons.map(reasonText).join('; ')}</dd>
              </div>
            ))}
          </dl>
        </Fold>
      ))}
    </section>
  )
}

function ofGroup(plan: Plan, code: string): readonly ExcludedSetUp[] {
  return plan.excluded.filter(({ reasons }) => reasons[0]?.code === code)
}
