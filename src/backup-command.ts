import { readEnvironment } from './service/environment.js'
import { BackupRefused, backUp, restore } from './submittals/store/backup.js'
import { InUse } from './submittals/store/sqlite.js'

/** `npm run backup -- FILE` and `npm run restore -- FILE`: of the folder that DATA_DIR names. */

const [what, file, ...more] = process.argv.slice(2)
const environment = readEnvironment(process.env)

function refuse(line: string): never {
  process.stderr.write(`${line}\n`)
  process.exit(1)
}

if ('refused' in environment) refuse(`The settings cannot be used:\n  ${environment.refused.join('\n  ')}`)
const { place } = environment.settings
if ('url' in place) refuse('With DATABASE_URL use pg_dump and pg_restore; docs/operations.md says how.')
if ((what !== 'backup' && what !== 'restore') || file === undefined || more.length > 0)
  refuse('Name one file: npm run backup -- FILE, or npm run restore -- FILE.')
try {
  const { submittals, files } = await (what === 'backup' ? backUp : restore)(place.folder, file)
  const done = what === 'backup' ? `Backed up to ${file}` : `Put back into ${place.folder}`
  process.stdout.write(`${done} and verified: ${submittals} submittals, ${files} files.\n`)
} catch (error) {
  if (error instanceof BackupRefused || error instanceof InUse) refuse(error.message)
  throw error
}
