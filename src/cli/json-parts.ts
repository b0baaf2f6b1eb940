// Parts that several JSON answers share: head, remarks with their texts. Leaves out the answers.
import type { SetUp } from '../kit/set-up.ts'
import type { SourceRow } from '../kit/source-row.ts'
import { writeCase } from '../patient/write-case.ts'
import type { RankedSetUp, Reason, Remark } from '../planning/plan-types.ts'
import { reasonText, remarkText } from '../words/remark-text.ts'
import { warningText } from '../words/warning-text.ts'
import type { PlanWords } from './plan-question.ts'

export function toldHead(options: { readonly given: PlanWords; readonly version: string }): object {
  const { given, version } = options
  return {
    version,
    case: writeCase(given.case),
    caseWarnings: given.warnings.map((warning) => ({ ...warning, text: warningText(warning) })),
    shelf: {
      hospital: given.shelf.hospital,
      isDemo: given.isDemoShelf,
      wardId: given.wardId ?? null,
    },
    sample: { draws: given.draws, seed: given.seed },
  }
}

/** A set-up with its source by id, kind and label: the rest of the source's row stands on the shelf. */
export function toldSetUp(setUp: SetUp): object {
  return { ...setUp, source: toldSource(setUp.source) }
}

export function toldSource({ id, kind, label }: SourceRow): object {
  return { id, kind, label }
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
