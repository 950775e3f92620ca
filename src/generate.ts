import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import openapiTypes, { astToString } from 'openapi-typescript'
import { z } from 'zod'
import { limitsMarkdown } from './service/limits-page.js'
import { problemMarkdown } from './service/problem-pages.js'
import { PROBLEM_TYPES } from './service/problem-table.js'
import { buildService } from './service/service.js'
import { DEFAULT_SETTINGS } from './service/settings.js'
import { standardMarkdown } from './service/standard-markdown.js'
import { gapsMarkdown, indexMarkdown } from './service/standards-index.js'
import { standardTable } from './service/standard-table.js'
import { listStandards } from './standards/catalogue.js'
import { load } from './standards/load.js'
import { EARLIER } from './standards/revisions.js'

/**
 * Writes what is made from the schemas and the tables: the OpenAPI document and the types of the client, the page of the
 * limits, of each problem and of each standard.
 * With `--compare` nothing is written; the exit status is 1 when a file on disk differs.
 * With `--lock` the digests of revisions that are not locked yet are locked.
 */

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const LOCK = 'tests/standards/digests.json'

async function generated(): Promise<Map<string, string>> {
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent', auth: 'keys' })
  const document = `${JSON.stringify(await app.describe(), null, 2)}\n`
  await app.close()
  return new Map([
    ['openapi/openapi.json', document],
    ['src/client/schema.ts', await clientTypes(document)],
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

const GENERATED = '/** Types of the requests and answers. Made by `npm run generate` from openapi/openapi.json. */\n\n'

/** The document is read as it is published, so that the types are those of everybody who makes a client from it. */
const clientTypes = async (document: string): Promise<string> =>
  GENERATED + astToString(await openapiTypes(JSON.parse(document) as Parameters<typeof openapiTypes>[0]))

const onDisk = (path: string): Promise<string | undefined> => readFile(join(ROOT, path), 'utf8').catch(() => undefined)

async function write(path: string, text: string) {
  await mkdir(dirname(join(ROOT, path)), { recursive: true })
  await writeFile(join(ROOT, path), text)
}

/** The digest of each revision of each table. A line is only ever added: what was locked is what clients have in their reports. */
async function lock(path: string) {
  const locked = z.record(z.string(), z.string()).parse(JSON.parse((await onDisk(path)) ?? '{}'))
  for (const { id, revision, digest } of [...EARLIER.map(load), ...listStandards()])
    locked[`${id}@${revision}`] ??= digest
  const lines = Object.entries(locked).sort(([a], [b]) => (a < b ? -1 : 1))
  await write(path, `${JSON.stringify(Object.fromEntries(lines), null, 2)}\n`)
}

const compare = process.argv.includes('--compare')
if (process.argv.includes('--lock')) await lock(LOCK)
let differing = 0
for (const [path, text] of await generated()) {
  if ((await onDisk(path)) === text) continue
  differing++
  if (!compare) await write(path, text)
  process.stdout.write(`${compare ? 'differs' : 'written'}: ${path}\n`)
}
if (compare && differing > 0) {
  process.stdout.write('Run `npm run generate` and commit the result.\n')
  process.exitCode = 1
}
