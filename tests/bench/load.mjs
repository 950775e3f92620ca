// npm run bench -- --load steady|burst|mixed|soak|all [--minutes 30]: how the service is under load. The service and a hostile
// client are processes of their own. Each profile tells what it found and writes it to docs/performance.md.
import autocannon from 'autocannon'
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { loadavg } from 'node:os'
import { clearInterval, setInterval } from 'node:timers'
import { readFileSync } from 'node:fs'
import { setTimeout as wait } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { createTranslator } from '../../dist/braille/engine.js'
import { signs } from './drawings.mjs'
import { startService } from './load-service.mjs'
import { PROFILES, writeUnderLoad } from './page.mjs'

const example = JSON.parse(readFileSync(new URL('./sign.json', import.meta.url), 'utf8'))
const drawing = signs(createTranslator())['4 KB']
const CONNECTIONS = 8
/** Seconds without an answer, after which it counts as lost. */
const LONGEST = 60
/** Share of the capacity at which latency is held against its median. */
const STEADY = 0.7
const GOALS = { tail: 10, wait: 100, growth: 5 }

let mark = 0
const json = (key) => ({
  method: 'POST',
  path: '/v1/checks',
  headers: { 'content-type': 'application/json', authorization: `Bearer ${key}` },
  // Every request differs, so that nothing is remembered of it.
  setupRequest: (request) => ({
    ...request,
    body: JSON.stringify({ ...example, sign: { ...example.sign, mark: `L-${mark++}` } }),
  }),
})
const svg = (key) => ({
  method: 'POST',
  path: '/v1/checks',
  headers: { 'content-type': 'image/svg+xml', authorization: `Bearer ${key}` },
  setupRequest: (request) => ({ ...request, body: `${drawing}<!-- ${mark++} -->` }),
})

/** Runs one load. @returns what was answered, and how long the answers that are no refusal took, in milliseconds */
async function load(base, requests, options) {
  const taken = []
  const statuses = {}
  const run = autocannon({ url: base, connections: CONNECTIONS, timeout: LONGEST, requests, ...options })
  run.on('response', (_client, status, _bytes, ms) => {
    statuses[status] = (statuses[status] ?? 0) + 1
    if (status === 200) taken.push(ms)
  })
  const { errors, timeouts, resets, requests: sent } = await run
  taken.sort((a, b) => a - b)
  const at = (share) => taken[Math.min(taken.length - 1, Math.floor(share * taken.length))] ?? NaN
  return {
    statuses,
    lost: errors + timeouts + resets,
    rate: sent.average,
    p50: at(0.5),
    p99: at(0.99),
    most: at(1),
  }
}

const only = (statuses, allowed) => Object.keys(statuses).every((status) => allowed.includes(Number(status)))
const told = (statuses) =>
  Object.entries(statuses)
    .map(([status, n]) => `${n} × ${status}`)
    .join(', ')
const ms = (value) => `${value.toFixed(value < 10 ? 1 : 0)} ms`
const result = (profile, what, found, goal, isMet) => ({ profile, what, found, goal, isMet })

async function capacityOf({ base, keys }) {
  await load(base, [json(keys.shop)], { duration: 4 })
  return (await load(base, [json(keys.shop)], { duration: 6 })).rate
}

async function steady(service, capacity) {
  const { base, keys } = service
  const found = await load(base, [json(keys.shop)], { duration: 20, overallRate: Math.floor(STEADY * capacity) })
  const ratio = found.p99 / found.p50
  return [
    result('steady', 'answers', told(found.statuses), 'all 200', only(found.statuses, [200])),
    result('steady', 'without an answer', String(found.lost), '0', found.lost === 0),
    result(
      'steady',
      'p99 / p50',
      `${ratio.toFixed(1)} (${ms(found.p99)} / ${ms(found.p50)})`,
      `at most ${GOALS.tail}`,
      ratio <= GOALS.tail,
    ),
  ]
}

/** Many more at once than can be answered soon, of short checks and of drawings, and then a quiet moment. */
async function burst({ base, keys }) {
  const calm = await load(base, [json(keys.shop)], { duration: 5, connections: 2 })
  const crowd = await load(base, [json(keys.crowd), json(keys.crowd), json(keys.crowd), svg(keys.crowd)], {
    duration: 10,
    connections: 400,
  })
  const after = await load(base, [json(keys.shop)], { duration: 5, connections: 2 })
  return [
    result('burst', 'answers of 400 connections', told(crowd.statuses), '200 or 503', only(crowd.statuses, [200, 503])),
    result('burst', 'without an answer', String(crowd.lost), '0', crowd.lost === 0),
    result('burst', 'p99 of the checks that were made', ms(crowd.p99), '', undefined),
    result(
      'burst',
      'median right after / before',
      `${(after.p50 / calm.p50).toFixed(1)} (${ms(after.p50)} / ${ms(calm.p50)})`,
      'at most 2',
      after.p50 <= 2 * calm.p50,
    ),
  ]
}

/** An ordinary client beside one with another key that posts every hostile file, four at a time. */
async function mixed({ base, keys, faults }, capacity) {
  const hostile = fork(fileURLToPath(new URL('./hostile-client.mjs', import.meta.url)))
  await once(hostile, 'message')
  hostile.send({ base, key: keys.hostile })
  const [short, drawn] = await Promise.all([
    load(base, [json(keys.shop)], {
      duration: 40,
      overallRate: Math.max(1, Math.floor(0.2 * capacity)),
      connections: 4,
    }),
    load(base, [svg(keys.shop)], { duration: 40, overallRate: 2, connections: 2 }),
  ])
  const end = once(hostile, 'message')
  hostile.send('stop')
  const [{ statuses, lost }] = await end
  const all = [short.statuses, drawn.statuses, statuses]
  const isServerFault = all.some((one) => Object.keys(one).some((status) => Number(status) >= 500 && status !== '503'))
  const lostNow = short.lost + drawn.lost + lost.length
  for (const line of [...lost, ...faults.slice(0, 5)]) console.log(`  ${line.slice(0, 300)}`)
  return [
    result('mixed', 'answers to hostile files', told(statuses), 'no 5xx but 503', !isServerFault),
    result('mixed', 'answers to descriptions', told(short.statuses), '200 or 503', only(short.statuses, [200, 503])),
    result('mixed', 'answers to drawings', told(drawn.statuses), '200 or 503', only(drawn.statuses, [200, 503])),
    result('mixed', 'without an answer', String(lostNow), '0', lostNow === 0),
    result(
      'mixed',
      'p99 of descriptions',
      `${ms(short.p99)} (median ${ms(short.p50)})`,
      `at most ${GOALS.wait} ms`,
      short.p99 <= GOALS.wait,
    ),
    result('mixed', 'p99 of drawings of 4 KB', `${ms(drawn.p99)} (median ${ms(drawn.p50)})`, '', undefined),
  ]
}

/** Megabytes an hour, by the least squares of what was seen. */
function slopeOf(seen) {
  const mean = (values) => values.reduce((a, b) => a + b, 0) / values.length
  const [hour, size] = [mean(seen.map(({ hour }) => hour)), mean(seen.map(({ size }) => size))]
  const over = seen.reduce((sum, one) => sum + (one.hour - hour) * (one.size - size), 0)
  return over / seen.reduce((sum, one) => sum + (one.hour - hour) ** 2, 0)
}

const SECONDS_OF_HOUR = 3600
async function soak({ base, keys, memory }, capacity, minutes) {
  const seen = []
  const started = performance.now()
  const watch = setInterval(() => {
    seen.push({ hour: (performance.now() - started) / 1000 / SECONDS_OF_HOUR, size: memory() })
  }, 1000)
  const duration = Math.round(minutes * 60)
  const [short, drawn] = await Promise.all([
    load(base, [json(keys.shop)], { duration, overallRate: Math.max(1, Math.floor(0.3 * capacity)), connections: 4 }),
    load(base, [svg(keys.shop)], { duration, overallRate: 4, connections: 2 }),
  ])
  clearInterval(watch)
  // The first third fills what is remembered.
  const later = seen.slice(Math.floor(seen.length / 3))
  const half = Math.floor(later.length / 2)
  const most = (values) => Math.max(...values.map(({ size }) => size))
  const growth = (most(later.slice(half)) / most(later.slice(0, half)) - 1) * 100
  const slope = `${slopeOf(later).toFixed(0)} MB an hour; most in the later half over the earlier: ${growth.toFixed(1)} %`
  return [
    result(
      'soak',
      `answers in ${minutes} minutes`,
      `${told(short.statuses)}; drawings ${told(drawn.statuses)}`,
      'all 200',
      only(short.statuses, [200]) && only(drawn.statuses, [200]),
    ),
    result('soak', 'without an answer', String(short.lost + drawn.lost), '0', short.lost + drawn.lost === 0),
    result(
      'soak',
      'resident memory',
      `${later[0].size.toFixed(0)} to ${most(later).toFixed(0)} MB; ${slope}`,
      `grows by at most ${GOALS.growth} %`,
      growth <= GOALS.growth,
    ),
  ]
}

/** @param profile `steady`, `burst`, `mixed`, `soak` or `all` */
export async function underLoad(profile, minutes) {
  const profiles = { steady, burst, mixed, soak: (service, capacity) => soak(service, capacity, minutes) }
  const names = profile === 'all' ? PROFILES : [profile]
  if (!names.every((name) => name in profiles)) throw new Error(`there is no profile ${profile}`)
  const [busy] = loadavg()
  const service = await startService(['shop', 'crowd', 'hostile'])
  const results = []
  try {
    // The threads are warm before anything counts.
    await load(service.base, [svg(service.keys.shop)], { amount: 40, connections: 4 })
    const capacity = await capacityOf(service)
    console.log(`capacity: ${capacity.toFixed(0)} descriptions a second`)
    for (const name of names) {
      const others = result(name, 'others that wanted a core before', busy.toFixed(1), 'none')
      const found = [others, ...(await profiles[name](service, capacity))]
      for (const { profile, what, found: value, goal, isMet } of found)
        console.log(`${profile.padEnd(7)} ${what.padEnd(36)} ${value}   ${goal}${isMet === false ? '   NOT MET' : ''}`)
      results.push(...found)
      await wait(2000)
    }
    console.log(`faults in the log: ${service.faults.length}`)
  } finally {
    await service.end()
  }
  writeUnderLoad(results)
}
