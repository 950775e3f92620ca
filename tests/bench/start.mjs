// How long the service takes to start, and what it holds of memory when nobody asks it anything. The one place where figures of a
// machine are told: the goals are absolute.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { ratioOf, row, spreadOf } from './measure.mjs'

const TEXT = `The service is started as \`npm start\` starts it, with SQLite and no settings, and is asked at \`/readyz\` until it says yes; then nobody asks it
anything. Memory is what is resident of all its processes, at rest and after it has checked one description and one
drawing. Held against it is a Node process that does nothing.`

const MAIN = fileURLToPath(new URL('../../dist/main.js', import.meta.url))
const SIGN = JSON.parse(readFileSync(new URL('./sign.json', import.meta.url), 'utf8'))
const DRAWING = readFileSync(new URL('../../docs/examples/glaze-lab.svg', import.meta.url))
const GOALS = { ready: 1000, memory: 150 }
/** Milliseconds between two looks. */
const PAUSE = 5
const KILOBYTE = 1024
const MEGABYTE = 1e6

async function freePort() {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address()
  server.close()
  return port
}

/** Children of a process, theirs too, and itself. */
function family(pid) {
  const parents = readdirSync('/proc')
    .filter((name) => /^\d+$/u.test(name))
    .flatMap((name) => {
      try {
        return [[Number(name), Number(/\) \S (\d+)/u.exec(readFileSync(`/proc/${name}/stat`, 'latin1'))?.[1])]]
      } catch {
        return []
      }
    })
  const found = [pid]
  for (const one of found) found.push(...parents.filter(([, parent]) => parent === one).map(([child]) => child))
  return found
}

/** Megabytes that are resident. */
function memoryOf(pid) {
  const of = (one) => Number(/^VmRSS:\s+(\d+)/mu.exec(readFileSync(`/proc/${one}/status`, 'latin1'))?.[1])
  return (family(pid).reduce((sum, one) => sum + of(one), 0) * KILOBYTE) / MEGABYTE
}

/** Milliseconds of the processor since it began. */
function processorOf(pid) {
  const [, rest = ''] = /\) (.*)/su.exec(readFileSync(`/proc/${pid}/stat`, 'latin1')) ?? []
  const fields = rest.split(' ')
  return (Number(fields[11]) + Number(fields[12])) * 10
}

async function until(address, child) {
  for (;;) {
    if (child.exitCode !== null) throw new Error('the service did not start')
    const answer = await fetch(address).catch(() => undefined)
    await answer?.text()
    if (answer?.status === 200) return
    await wait(PAUSE)
  }
}

async function askOnce(base) {
  const json = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(SIGN) }
  const drawing = { method: 'POST', headers: { 'content-type': 'image/svg+xml' }, body: DRAWING }
  const times = []
  for (const [path, request] of [
    ['/v1/checks', json],
    ['/v1/checks?use=permanent-room', drawing],
  ]) {
    const started = performance.now()
    const answer = await fetch(`${base}${path}`, request)
    await answer.text()
    if (answer.status !== 200) throw new Error(`a first check was answered with ${answer.status}`)
    times.push(performance.now() - started)
  }
  return times
}

async function startOnce(rest) {
  const folder = mkdtempSync(join(tmpdir(), 'start-'))
  const port = await freePort()
  const env = { PATH: process.env.PATH, DATA_DIR: folder, PORT: String(port) }
  const started = performance.now()
  const child = spawn(process.execPath, ['--disable-warning=ExperimentalWarning', MAIN], { env, stdio: 'ignore' })
  const base = `http://127.0.0.1:${port}`
  await until(`${base}/readyz`, child)
  const ready = performance.now() - started
  const processor = processorOf(child.pid)
  await wait(rest)
  const memory = memoryOf(child.pid)
  const [description, drawing] = await askOnce(base)
  const used = memoryOf(child.pid)
  const gone = once(child, 'exit')
  child.kill('SIGTERM')
  await gone
  rmSync(folder, { recursive: true, force: true })
  return { ready, processor, memory, used, description, drawing }
}

/** Milliseconds of the processor of a Node that says that it is there and waits. */
async function bareOnce() {
  const child = spawn(process.execPath, ['-e', 'console.log(1); setInterval(() => undefined, 1e6)'])
  await once(child.stdout, 'data')
  const processor = processorOf(child.pid)
  const memory = memoryOf(child.pid)
  child.kill('SIGKILL')
  return { processor, memory }
}

export async function startSection({ quick }) {
  const title = 'Start and rest'
  if (process.platform !== 'linux')
    return { title, text: `${TEXT}\n\nNot measured in this run: it reads /proc, of Linux.`, rows: [] }
  const [busy] = loadavg()
  const found = []
  for (let round = 0; round < (quick ? 3 : 5); round++)
    found.push({ ...(await startOnce(quick ? 500 : round === 0 ? 60_000 : 10_000)), bare: await bareOnce() })
  const of = (key) => spreadOf(found.map((one) => one[key]))
  const bare = (key) => ratioOf({ all: found.map((one) => one[key]) }, { all: found.map((one) => one.bare[key]) })
  const rows = [
    row(
      'processor time until /readyz says yes / of a Node that does nothing',
      bare('processor'),
      '',
      `${of('processor').median} ms`,
    ),
    row('memory at rest / of a Node that does nothing', bare('memory'), '', `${of('memory').median.toFixed(0)} MB`),
  ]
  const { median, low, high } = of('ready')
  const met = (isMet) => (isMet ? 'goal met' : 'goal not met')
  const ms = (key) => `${of(key).median.toFixed(0)} ms`
  const facts = [
    `From the start to the first yes of \`/readyz\`: ${median.toFixed(0)} ms (${low.toFixed(0)} to ${high.toFixed(0)}), of which ${ms('processor')} of the processor; at most ${GOALS.ready} ms: ${met(median <= GOALS.ready)}.`,
    `Memory at rest: ${of('memory').median.toFixed(0)} MB; at most ${GOALS.memory} MB: ${met(of('memory').median <= GOALS.memory)}. After one description and one drawing, with the core and all threads loaded: ${of('used').median.toFixed(0)} MB.`,
    `The first description took ${ms('description')}, loading included, the first drawing ${ms('drawing')}, its threads' start included.`,
    `Before this ${busy.toFixed(1)} other processes wanted a core, on average of a minute.`,
  ]
  if (!quick) console.log(facts.join('\n'))
  return { title, text: TEXT, rows, facts }
}
