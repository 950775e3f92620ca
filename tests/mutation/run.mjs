// npm run mutate [-- --folder judge|measure] [-- --file measure/alignment.ts]: changes the code in small ways and tells which changes no test
// notices: docs/testing.md. What was measured before and has not changed is not measured again.
import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { Stryker } from '@stryker-mutator/core'

const { values } = parseArgs({ options: { folder: { type: 'string' }, file: { type: 'string', multiple: true } } })
const FOLDERS = ['judge', 'measure']
const wanted = values.file ?? (values.folder === undefined ? FOLDERS : [values.folder])

const missing = wanted.filter((path) => !existsSync(`src/${path}`))
if (missing.length > 0) {
  console.error(`There is no src/${missing.join(', src/')}.`)
  process.exit(2)
}

const mutate = wanted.map((path) => (path.endsWith('.ts') ? `src/${path}` : `src/${path}/**/*.ts`))
await new Stryker({ configFile: '.config/stryker.config.mjs', mutate }).runMutationTest()
