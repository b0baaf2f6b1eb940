// The picture of cylinders over a way, and the same in words; on paper the words alone where the picture would be too small. Leaves out how it is drawn.
import { timelineSvg, timelineText } from '../../pictures/gas-timeline.ts'
import type { Course, CylinderRun, TransferPlan } from '../../supply/transfer.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { cylinderKindText, TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import type { GasUnits } from '../../words/supply-value.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import type { TimeOfDay } from './wall-clock.ts'

/** On paper a picture of more legs and cylinders would shrink below 8 pt: the same in words stands for it. */
const PRINTED_ROWS_MOST = 7

export function Timeline(props: {
  readonly plan: TransferPlan
  readonly course: Course
  readonly leaveAt: TimeOfDay
  readonly units: GasUnits
}) {
  const { plan, course, leaveAt, units } = props
  const options = {
    legs: plan.legs.map(({ leg, fromMinute, untilMinute }) => ({
      kind: leg.kind,
      fromMinute,
      untilMinute,
    })),
    course: { ...course, runs: course.runs.map((run) => named(run, plan, units)) },
    reservedMinutes: plan.need.reservedMinutes,
    leaveAt,
  }
  const isLong = options.legs.length + course.runs.length > PRINTED_ROWS_MOST
  return (
    <section className="section gas-timeline">
      <h2>{TRANSFER_TEXT.picture()}</h2>
      <div className={isLong ? 'gas-screen-only' : ''}>
        <Picture draw={(widthPx) => timelineSvg({ ...options, widthPx })} />
      </div>
      {isLong ? (
        <div className="gas-print-only">
          <Lines lines={timelineText(options)} />
        </div>
      ) : null}
      <div className="gas-screen-only">
        <Fold heading={GAS_TEXT.inWords()}>
          <Lines lines={timelineText(options)} />
        </Fold>
      </div>
    </section>
  )
}

/** A cylinder without a name of its own is called by its size and pressure. */
function named(run: CylinderRun, { choice }: TransferPlan, units: GasUnits): CylinderRun {
  const row = choice.picks.find((pick) => pick.row.id === run.rowId)?.row
  return run.label !== '' || row === undefined
    ? run
    : { ...run, label: cylinderKindText(row, units) }
}
