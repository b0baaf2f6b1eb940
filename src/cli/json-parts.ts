// Parts that several JSON answers share: head, remarks with their texts. Leaves out the answers.
import type { RankedSetUp, Reason, Remark } from '../planning/plan-types.ts'
import { reasonText, remarkText } from '../words/remark-text.ts'
import { warningText } from '../words/warning-text.ts'
import type { PlanWords } from './plan-question.ts'

export function toldHead(options: { readonly given: PlanWords; readonly version: string }): object {
  const { given, version } = options
  return {
    version,
    case: given.case,
    caseWarnings: given.warnings.map((warning) => ({ ...warning, text: warningText(warning) })),
    shelf: {
      hospital: given.shelf.hospital,
      isDemo: given.isDemoShelf,
      wardId: given.wardId ?? null,
    },
    sample: { draws: given.draws, seed: given.seed },
  }
}

export function told(remark: Remark): object {
  return { ...remark, text: remarkText(remark) }
}

export function toldReason(reason: Reason): object {
  return { ...reason, text: reasonText(reason) }
}

export function toldRemarks(ranked: RankedSetUp): readonly object[] {
  return [...ranked.remarks, ...ranked.humidity, ...ranked.watch].map(told)
}
