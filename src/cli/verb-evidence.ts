// `oxwright evidence`: runs every outside check and shows published beside ours. Leaves out what the checks are.
import { fractionPoints } from '../evidence/fraction-points.ts'
import { evidenceReport, isMiss } from '../evidence/report.ts'
import type { EvidenceReport } from '../evidence/report.ts'
import type { RowOutcome } from '../evidence/verdict.ts'
import { FAMILY_IDS } from '../kit/family-id.ts'
import type { FamilyId } from '../kit/family-id.ts'
import { evidencePlotSvg } from '../pictures/evidence-plot.ts'
import { oneOf } from './arguments.ts'
import { evidenceJson } from './evidence-json.ts'
import { evidenceLines } from './evidence-lines.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS } from './verb.ts'
import type { Verb } from './verb.ts'

export const evidenceVerb: Verb = {
  options: { ...COMMON_OPTIONS, family: 'text', misses: 'switch', all: 'switch', svg: 'text' },
  takesCase: false,
  run: ({ words, terminal, version }) => {
    const family = oneOf(words, 'family', FAMILY_IDS)
    const onlyMisses = words.switches.has('misses')
    const withRows = words.switches.has('all') || (family !== undefined && !onlyMisses)
    const whole = evidenceReport()
    const shown = narrowed(whole, { family, onlyMisses })
    const svgPath = words.texts.get('svg')
    if (svgPath !== undefined) {
      const points = fractionPoints(shown.outcomes)
      writeText(svgPath, evidencePlotSvg({ points, mode: 'file' }))
    }
    terminal.out(
      words.switches.has('json')
        ? evidenceJson({ report: shown, version })
        : evidenceLines(shown, { withRows }).join('\n'),
    )
    return evidenceExit(whole)
  },
}

export function evidenceExit(report: EvidenceReport): ExitCode {
  return report.outcomes.some(isSolidMiss) ? EXIT.evidenceMiss : EXIT.ok
}

/** The rows asked for; the counts stay those of the whole report. */
function narrowed(
  report: EvidenceReport,
  wanted: { readonly family: FamilyId | undefined; readonly onlyMisses: boolean },
): EvidenceReport {
  const { family, onlyMisses } = wanted
  const isOfFamily = (outcome: RowOutcome): boolean =>
    family === undefined || outcome.row.family === family
  return {
    counts: report.counts,
    outcomes: report.outcomes.filter((one) => isOfFamily(one) && (!onlyMisses || isMiss(one))),
    families: report.families.filter((one) => family === undefined || one.family === family),
    misses: report.misses.filter(({ outcome }) => isOfFamily(outcome)),
  }
}

/** Published equations and limiting cases must be met exactly: a miss there is a fault of ours. */
function isSolidMiss(outcome: RowOutcome): boolean {
  const { row } = outcome
  return isMiss(outcome) && (row.kind === 'formula' || row.isLimitingCase)
}
