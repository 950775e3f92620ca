import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { limitsMarkdown } from './service/limits-page.js'
import { problemMarkdown } from './service/problem-pages.js'
import { PROBLEM_TYPES } from './service/problem-table.js'
import { buildService } from './service/service.js'
import { DEFAULT_SETTINGS } from './service/settings.js'
import { standardMarkdown } from './service/standard-markdown.js'
import { gapsMarkdown, indexMarkdown } from './service/standards-index.js'
import { standardTable } from './service/standard-table.js'
import { listStandards } from './standards/catalogue.js'

/**
 * Writes what is made from the schemas and the tables: the OpenAPI document, the page of the limits,
 * of each problem and of each standard.
 * With `--compare` nothing is written; the exit status is 1 when a file on disk differs.
 */

const ROOT = fileURLToPath(new URL('..', import.meta.url))

async function generated(): Promise<Map<string, string>> {
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent' })
  const document = app.swagger()
  await app.close()
  return new Map([
    ['openapi/openapi.json', `${JSON.stringify(document, null, 2)}\n`],
    ['docs/limits.md', limitsMarkdown()],
    ...PROBLEM_TYPES.map((type): [string, string] => [`docs/problems/${type}.md`, problemMarkdown(type)]),
    ...listStandards().map((standard): [string, string] => [
      `docs/standards/${standard.id}.md`,
      standardMarkdown(standardTable(standard), standard.changes),
    ]),
    ['docs/standards/README.md', indexMarkdown(listStandards())],
    ['docs/standards/gaps.md', gapsMarkdown(listStandards())],
  ])
}

const onDisk = (path: string): Promise<string | undefined> => readFile(join(ROOT, path), 'utf8').catch(() => undefined)

const compare = process.argv.includes('--compare')
let differing = 0
for (const [path, text] of await generated()) {
  if ((await onDisk(path)) === text) continue
  differing++
  if (!compare) {
    await mkdir(dirname(join(ROOT, path)), { recursive: true })
    await writeFile(join(ROOT, path), text)
  }
  process.stdout.write(`${compare ? 'differs' : 'written'}: ${path}\n`)
}
if (compare && differing > 0) {
  process.stdout.write('Run `npm run generate` and commit the result.\n')
  process.exitCode = 1
}
