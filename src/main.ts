import closeWithGrace from 'close-with-grace'
import { readEnvironment } from './service/environment.js'
import { buildService } from './service/service.js'
import { DEFAULT_SETTINGS } from './service/settings.js'

/** The process: environment → settings → service → listen → drain. */

/** Milliseconds that running checks have to finish when the process is told to stop. */
const GRACE = 10_000

const environment = readEnvironment(process.env)
if ('refused' in environment) {
  process.stderr.write(`Fingertrue does not start:\n${environment.refused.map((line) => `  ${line}\n`).join('')}`)
  process.exit(1)
}

const { host, port, settings, remarks } = environment
const app = await buildService({ ...DEFAULT_SETTINGS, ...settings })
for (const remark of remarks) app.log.warn(remark)
closeWithGrace({ delay: GRACE, logger: app.log }, async ({ signal, err }) => {
  if (err) app.log.error({ err }, 'the process stops because of an error')
  else app.log.info(`${signal ?? 'close'} received; finishing what runs`)
  app.drain()
  await app.close()
})
await app.listen({ host, port })
