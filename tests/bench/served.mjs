// The built service in a process of its own, whose event loop is watched. Told 'start' or 'stop' by its parent; tells the
// longest and the usual delay of the loop since 'start', in milliseconds.
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { createTranslator } from '../../dist/braille/engine.js'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'

const NANOSECONDS = 1e6
const loop = monitorEventLoopDelay({ resolution: 1 })
const service = await buildService(
  { ...DEFAULT_SETTINGS, logLevel: 'silent', threads: 1 },
  { translator: createTranslator() },
)
const base = await service.listen({ port: 0, host: '127.0.0.1' })
process.on('message', (word) => {
  if (word === 'start') {
    loop.reset()
    loop.enable()
    process.send({})
  } else {
    loop.disable()
    process.send({ longest: loop.max / NANOSECONDS, usual: loop.percentile(50) / NANOSECONDS })
  }
})
process.send({ base })
