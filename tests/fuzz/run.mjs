// npm run fuzz -- --reader drawing --minutes 15: looks for bytes that a reader fails at (docs/security.md, Fuzzing).
// With --node PROGRAM, the engine runs under that Node; with --work FOLDER, it keeps its corpus there.
import { spawn, spawnSync } from 'node:child_process'
import { copyFileSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { createHash } from 'node:crypto'
import { createInterface } from 'node:readline'
import { join } from 'node:path'
import { LONGEST, pathOf, seedsOf } from './seeds.mjs'
import { dictionaryOf } from './words.mjs'

const READERS = Object.keys(LONGEST)
/** Seconds that one input may take, on a machine that others use too. */
const LONGEST_SECONDS = 10
/** The same for a request: a thread that is begun anew has all its modules counted first. */
const LONGEST_REQUEST = 30
/** Megabytes of the whole process. */
const MOST_MEMORY = 2048
/** Findings after which a run ends: the first of them are to be mended before one goes on. */
const MOST_FINDINGS = 20
/** The C library that the engine’s binary asks for. */
const NEEDED_GLIBC = [2, 38]
/** Besides our own code: what reads text for us. */
const INSTRUMENTED = ['saxes', 'svg-parser', 'css-tree/lib', 'css-select', 'csv-parse', 'secure-json-parse']

const said = (name, otherwise) =>
  process.argv.includes(name) ? process.argv[process.argv.indexOf(name) + 1] : otherwise
const reader = said('--reader', '')
if (!READERS.includes(reader)) fail(`Name a reader: --reader ${READERS.join(' | ')}.`)
const minutes = Number(said('--minutes', '15'))
if (!(minutes > 0)) fail('The minutes are no number above zero.')
const node = said('--node', process.execPath)
const work = said('--work', pathOf('node_modules/.cache/fuzz'))

function fail(message) {
  console.error(message)
  process.exit(2)
}

/** Installs the engine from its lock, where that was not done before. */
function engine() {
  const folder = join(work, 'engine')
  const program = join(folder, 'node_modules/@jazzer.js/core/dist/cli.js')
  if (existsSync(program)) return program
  mkdirSync(folder, { recursive: true })
  for (const name of ['package.json', 'package-lock.json'])
    copyFileSync(pathOf(`tests/fuzz/engine/${name}`), join(folder, name))
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], { cwd: folder, stdio: 'inherit' })
  if (status !== 0) fail('The engine could not be installed.')
  return program
}

function knownToRun() {
  const script = 'console.log(process.report.getReport().header.glibcVersionRuntime ?? "")'
  const version = spawnSync(node, ['-e', script], { encoding: 'utf8' }).stdout.trim()
  const [major = 0, minor = 0] = version.split('.').map(Number)
  if (version === '' || major > NEEDED_GLIBC[0] || minor >= NEEDED_GLIBC[1]) return
  fail(
    `The engine needs the C library ${NEEDED_GLIBC.join('.')}, and here is ${version}. Run it on Debian 13 or Ubuntu 24.04, or name a Node that runs with a newer one: --node PROGRAM.`,
  )
}

const folderOf = (name) => {
  const folder = join(work, reader, name)
  mkdirSync(folder, { recursive: true })
  return folder
}

function writeSeeds(folder) {
  const seeds = seedsOf(reader)
  for (const bytes of seeds) writeFileSync(join(folder, createHash('sha1').update(bytes).digest('hex')), bytes)
  return seeds.length
}

/** One run of the engine, to its end or to a finding. @returns what it says of itself */
function run(seconds, folders) {
  const dictionary = join(folders.corpus, '..', 'words.dict')
  writeFileSync(dictionary, dictionaryOf(reader))
  const options = [
    `-max_total_time=${Math.ceil(seconds)}`,
    `-max_len=${LONGEST[reader]}`,
    `-rss_limit_mb=${MOST_MEMORY}`,
    `-dict=${dictionary}`,
    `-artifact_prefix=${folders.found}/`,
    '-print_final_stats=1',
    '-reload=0',
  ]
  const included = [pathOf('dist/'), ...INSTRUMENTED.map((name) => `node_modules/${name}/`)]
  const patience = reader === 'service' ? LONGEST_REQUEST : LONGEST_SECONDS
  const sync = ['schedule', 'service'].includes(reader) ? [] : ['--sync']
  // The files of a service stand below its own folder, and its routes are paths: the detector of paths is for other targets.
  const detectors = reader === 'service' ? ['--disableBugDetectors', 'path-traversal'] : []
  const child = spawn(
    node,
    [
      '--disable-warning=ExperimentalWarning',
      program,
      pathOf(`tests/fuzz/${reader}.mjs`),
      folders.corpus,
      folders.seeds,
      ...included.flatMap((path) => ['-i', path]),
      ...['-e', '@jazzer.js', ...sync, ...detectors, '--timeout', String(patience * 1000)],
      '--',
      ...options,
    ],
    { stdio: ['ignore', 'inherit', 'pipe'] },
  )
  const told = { executed: 0, edges: 0, features: 0, counters: 0 }
  createInterface({ input: child.stderr }).on('line', (line) => {
    const [, counters] = /^INFO: Loaded \d+ modules\s+\((\d+) inline/u.exec(line) ?? []
    if (counters) told.counters = Number(counters)
    // Such lines go on with the address of each.
    if (!line.startsWith('INFO: Loaded')) console.error(line)
    const [, executed, edges, features] = /^#(\d+)\s.*\bcov: (\d+) ft: (\d+)/u.exec(line) ?? []
    if (executed) Object.assign(told, { executed: Number(executed), edges: Number(edges), features: Number(features) })
    const [, whole] = /^stat::number_of_executed_units:\s*(\d+)/u.exec(line) ?? []
    if (whole) told.executed = Number(whole)
  })
  return new Promise((resolve) => child.on('close', (status) => resolve({ ...told, status })))
}

knownToRun()
const program = engine()
const folders = { corpus: folderOf('corpus'), seeds: folderOf('seeds'), found: folderOf('found') }
const seeds = writeSeeds(folders.seeds)
const before = new Set(readdirSync(folders.found))
const end = performance.now() + minutes * 60_000
const sum = { executed: 0, edges: 0, features: 0, counters: 0 }
let stopped = 0
for (let left = minutes * 60; left > 1 && stopped < MOST_FINDINGS; left = (end - performance.now()) / 1000) {
  const { executed, edges, features, counters, status } = await run(left, folders)
  sum.executed += executed
  sum.edges = Math.max(sum.edges, edges)
  sum.features = Math.max(sum.features, features)
  sum.counters = counters
  if (executed === 0) fail('The engine ended before it tried anything.')
  if (status === 0) break
  stopped++
}
const found = readdirSync(folders.found).filter((name) => !before.has(name))
console.log(
  `${reader}: ${minutes} minutes, ${sum.executed} inputs, ${sum.edges} of ${sum.counters} edges, ${sum.features} features, ` +
    `${seeds} seeds, ${readdirSync(folders.corpus).length} inputs kept, ${found.length} findings`,
)
for (const name of found) console.log(join(folders.found, name))
process.exit(stopped > 0 ? 1 : 0)
