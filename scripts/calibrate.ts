// Prints stored and refitted parameters and the leave-one-out predictions of the reservoir mask. Exit code 1 when a stored value is stale.
import { leaveOneOut, refitParameters } from '../src/evidence/calibration.ts'

const fits = refitParameters()
console.log('parameter                      stored   refitted  tolerance  kept  rows')
for (const fit of fits) {
  const kept = fit.isKept ? 'yes' : 'NO'
  const note = fit.isFlat ? ' (hardly depends on it: tolerance is on the row)' : ''
  console.log(
    `${fit.id.padEnd(28)} ${cell(fit.stored)} ${cell(fit.refitted)} ${cell(fit.tolerance)}   ${kept.padEnd(4)}  ${fit.rowIds.join(', ')}${note}`,
  )
}
console.log('\nleave one out, reservoir mask  published  predicted  miss')
for (const row of leaveOneOut()) {
  const note = row.isIdentified ? '' : '  no other row fixes this fit: predicted as if tight'
  const miss = row.predicted - row.publishedValue
  console.log(
    `${row.rowId.padEnd(28)} ${cell(row.publishedValue)} ${cell(row.predicted)} ${cell(miss)}${note}`,
  )
}
process.exitCode = fits.every((fit) => fit.isKept) ? 0 : 1

function cell(value: number): string {
  return value.toFixed(4).padStart(10)
}
