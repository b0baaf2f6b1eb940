// The address of a sheet on this page: what the set-up in sight would be asked by, and what the address in force asks. Leaves out making the sheet.
import { useSyncExternalStore } from 'react'
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import type { CandidateSetUp } from '../../kit/build-set-ups.ts'
import { stepCode } from '../../kit/flow-steps.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Humidification } from '../../kit/shelf.ts'
import type { Case } from '../../patient/case.ts'
import { writeCase } from '../../patient/write-case.ts'
import { MODEL_VERSION } from '../../planning/plan.ts'
import { writeFragment } from '../../sheet/fragment.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import { wallText } from '../../sheet/wall-clock.ts'
import { readDraft } from '../case/case-input.ts'
import { keptDraft, keptTypedAt } from '../case/draft-store.ts'
import type { PlanRequest } from '../worker/core-api.ts'
import { SHEET_PATH } from './sheet-path.ts'

/** A set-up as the shelf builds it, of this very source or, for one typed at the bed, of one of its kind; undefined where the shelf builds none. */
export function candidateOf(
  setUp: SetUp,
  { shelf, wardId }: PlanRequest,
): CandidateSetUp | undefined {
  const alike = candidateSetUps(shelf, wardId).filter((one) => isAlike(one.setUp, setUp))
  const same = alike.find((one) => one.setUp.source.id === setUp.source.id)
  return same ?? alike[0]
}

function isAlike(one: SetUp, other: SetUp): boolean {
  const overOf = ({ over }: SetUp): string | null => (over === null ? null : stepCode(over.flow))
  return (
    one.family === other.family &&
    one.size === other.size &&
    one.source.kind === other.source.kind &&
    stepCode(one.flow) === stepCode(other.flow) &&
    one.setO2Fraction === other.setO2Fraction &&
    overOf(one) === overOf(other)
  )
}

/** Throws SIZE_OUT_OF_RANGE where the case is too long for an address. */
export function sheetHref(
  request: PlanRequest,
  setUpId: string,
  humidification?: Humidification,
): string {
  const nowMs = Date.now()
  const now = momentOf(new Date(nowMs))
  const { about, wardId } = request
  const fragment = writeFragment({
    case: about,
    setUpId,
    madeAt: now,
    // The readings are as old as the case: a sheet made later does not make them newer.
    readAt: momentOf(new Date(Math.min(nowMs, keptTypedAt(localStorage) ?? nowMs))),
    modelVersion: MODEL_VERSION,
    ...(wardId === undefined ? {} : { wardId }),
    ...(humidification === undefined ? {} : { humidification }),
  })
  return `${SHEET_PATH}#${fragment}`
}

/** As the clock on the wall shows it. */
export function momentOf(date: Date): string {
  return wallText({
    year: date.getFullYear(),
    month: date.getMonth() + 1,
    day: date.getDate(),
    hour: date.getHours(),
    minute: date.getMinutes(),
  })
}

/** What stands behind # now. */
export function useFragment(): string {
  return useSyncExternalStore(
    (tell) => {
      addEventListener('hashchange', tell)
      return () => removeEventListener('hashchange', tell)
    },
    () => location.hash.slice(1),
  )
}

/** Puts another request into the address in force. */
export function replaceRequest(request: SheetRequest): void {
  history.replaceState(history.state, '', `${SHEET_PATH}#${writeFragment(request)}`)
  dispatchEvent(new HashChangeEvent('hashchange'))
}

/** With the code of the case typed on this device, where it is this very case: it is printed and never in the address. */
export function withOwnCode(request: SheetRequest): SheetRequest {
  const draft = keptDraft(localStorage)
  const read = draft === undefined ? null : readDraft(draft)
  if (read === null || !read.ok || read.case.code === undefined) return request
  const { code, note: _note, ...rest } = read.case
  if (textOf(rest) !== textOf(request.case)) return request
  return { ...request, case: { ...request.case, code } }
}

function textOf(about: Case): string {
  return JSON.stringify(writeCase(about))
}
