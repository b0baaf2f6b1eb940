// What the sheet page says around a sheet. Leaves out the sheet itself.
import { say } from './say.ts'

export const SHEET_WORDS = {
  heading: say('Bedside sheet'),
  open: say('Bedside sheet'),
  print: say('Print this sheet'),
  openCase: say('Open its case on Bedside'),
  tooLong: say(
    'The case is too long for the address of a sheet. Shorten the bed or the reason for the goal.',
  ),
  nothing: say(
    'No sheet is named in this address. Choose a set-up on Bedside, then press “Bedside sheet”.',
  ),
  unreadable: say(
    'This address cannot be read as a sheet: it was cut, changed, or made by another version.',
  ),
  notOnShelf: say(
    'The set-up of this sheet is not on the shelf used here, so its numbers cannot be made.',
  ),
  readAt: say('readings taken at'),
  readAtHelp: say('The sheet counts from this time.'),
  cylinder: {
    waterVolumeL: say('water volume of the cylinder'),
    gauge: say('gauge now'),
    left: say('changed at'),
  },
  workOut: say('Work out when to change it'),
} as const

export function otherModelText(made: string, here: string): string {
  return say('This sheet was made by model {made}; the numbers here are those of model {here}.', {
    made,
    here,
  })
}
