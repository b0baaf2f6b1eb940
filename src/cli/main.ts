#!/usr/bin/env node
// The process around one run of the command line, in the language chosen. Leaves out everything else.
import { speakLanguage } from '../words/languages.ts'
import { chosenLanguage, LANGUAGE_VARIABLE } from './language.ts'

// A reader that closes early, such as head, is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})
const chosen = chosenLanguage(process.argv.slice(2), process.env[LANGUAGE_VARIABLE])
await speakLanguage(chosen.language)
// Only now: texts are said while these modules load.
const { explain, runCli } = await import('./run.ts')
const { processTerminal } = await import('./terminal.ts')
const { unknownLanguage } = await import('./failure.ts')
process.exitCode =
  chosen.unknownVariable === undefined
    ? await runCli(chosen.words, processTerminal())
    : explain(unknownLanguage(LANGUAGE_VARIABLE, chosen.unknownVariable), processTerminal())
