#!/usr/bin/env node
// The process around one run of the command line. Leaves out everything else.
import { runCli } from './run.ts'
import { processTerminal } from './terminal.ts'

// A reader that closes early, such as head, is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})
process.exitCode = runCli(process.argv.slice(2), processTerminal())
