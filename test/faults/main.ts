// `npm run check:faults`: plants each fault, prints which checks saw it, and fails if one went unseen.
import { FAULTS } from './fault-list.ts'
import { judgeFault, runPlanted } from './plant.ts'

const healthy = await runPlanted(null)
console.log(`${Object.values(healthy).filter(Boolean).length} checks hold without a fault\n`)
console.log(`${'fault'.padEnd(46)} ${'seen'.padEnd(5)} red  named checks`)
let unseen = 0
for (const fault of FAULTS) {
  const { undetected, notGreenBefore, turnedRed } = await judgeFault(fault, healthy)
  const isSeen = undetected.length === 0 && notGreenBefore.length === 0
  if (!isSeen) unseen++
  const trouble = [
    ...undetected.map((id) => `${id} stayed green`),
    ...notGreenBefore.map((id) => `${id} was not green before`),
  ]
  console.log(
    `${fault.id.padEnd(46)} ${(isSeen ? 'yes' : 'NO').padEnd(5)} ${String(turnedRed).padStart(3)}  ${isSeen ? fault.red.join(', ') : trouble.join('; ')}`,
  )
}
console.log(`\n${FAULTS.length - unseen} of ${FAULTS.length} faults seen`)
process.exitCode = unseen === 0 && FAULTS.length >= 14 ? 0 : 1
