import { readEnvironment } from './service/environment.js'
import { runKeysCommand } from './submittals/keys/command.js'
import { openStore } from './submittals/store/connect.js'

/** `npm run keys -- …`: the API keys, in the store that DATA_DIR or DATABASE_URL names. The key goes to the standard output alone. */

const environment = readEnvironment(process.env)
if ('refused' in environment) {
  process.stderr.write(`The settings cannot be used:\n${environment.refused.map((line) => `  ${line}\n`).join('')}`)
  process.exit(1)
}
const store = await openStore(environment.settings.place, (error) => process.stderr.write(`${error.message}\n`), true)
try {
  const { out, error, status } = await runKeysCommand(process.argv.slice(2), store.db)
  process.stderr.write(error)
  process.stdout.write(out)
  process.exitCode = status
} finally {
  await store.close()
}
