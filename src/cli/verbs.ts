// The verbs of the command line by name. A new verb is one line here, one file, and its help in words/cli-text.ts.
import type { VerbName } from '../words/cli-text.ts'
import type { Verb } from './verb.ts'
import { breathVerb } from './verb-breath.ts'
import { chainVerb } from './verb-chain.ts'
import { cylinderVerb } from './verb-cylinder.ts'
import { evidenceVerb } from './verb-evidence.ts'
import { humidityVerb } from './verb-humidity.ts'
import { planVerb } from './verb-plan.ts'
import { roomVerb } from './verb-room.ts'
import { sheetVerb } from './verb-sheet.ts'
import { shelfVerb } from './verb-shelf.ts'
import { stockVerb } from './verb-stock.ts'
import { transferVerb } from './verb-transfer.ts'
import { wardDemandVerb } from './verb-ward-demand.ts'

export type { VerbName }

export const VERBS: Readonly<Record<VerbName, Verb>> = {
  plan: planVerb,
  breath: breathVerb,
  humidity: humidityVerb,
  cylinder: cylinderVerb,
  sheet: sheetVerb,
  transfer: transferVerb,
  'ward-demand': wardDemandVerb,
  room: roomVerb,
  stock: stockVerb,
  chain: chainVerb,
  shelf: shelfVerb,
  evidence: evidenceVerb,
}
