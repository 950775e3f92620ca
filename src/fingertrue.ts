#!/usr/bin/env node
import { STATUS } from './command/status.js'

/** `fingertrue check …`: the check on the command line, for pipelines. No network, nothing kept; `fingertrue --help` tells the rest. */

// Older Nodes tell on every start that modules of JSON are experimental. Whoever reads a report has no use for that.
const emitWarning = process.emitWarning.bind(process) as (...given: unknown[]) => void
process.emitWarning = (...given: unknown[]) => {
  if (given[1] !== 'ExperimentalWarning') emitWarning(...given)
}
// A reader that has seen enough (`| head`) ends the program, not with an error.
process.stdout.on('error', (error: NodeJS.ErrnoException) =>
  process.exit(error.code === 'EPIPE' ? undefined : STATUS.output),
)

try {
  const { run } = await import('./command/run.js')
  const { out, error, status } = await run(process.argv.slice(2), new Date().toISOString())
  process.exitCode = status
  process.stderr.write(error)
  process.stdout.write(out)
} catch (error) {
  process.stderr.write(
    `The program broke off. ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  )
  process.exitCode = STATUS.internal
}
