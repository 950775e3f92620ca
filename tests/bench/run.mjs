// npm run bench [-- --quick] [-- --stages] [-- --load PROFILE]: how fast a check is, as ratios against peers in this same run. Prints a table and writes
// docs/performance.md, asserts nothing. With --quick: fewer rounds, and no page. With --stages: where the time of a check goes, and
// nothing else. With --load: how the service is under load (load.mjs).
import autocannon from 'autocannon'
import Fastify from 'fastify'
import { serializerCompiler, validatorCompiler } from 'fastify-type-provider-zod'
import { Resvg } from '@resvg/resvg-js'
import { readFileSync } from 'node:fs'
import { optimize } from 'svgo'
import { createTranslator } from '../../dist/braille/engine.js'
import { check } from '../../dist/check.js'
import { CheckRequest } from '../../dist/service/check-request.js'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'
import { fieldOfDots, signs } from './drawings.mjs'
import { correctionRows } from './corrections.mjs'
import { madeRows } from './made.mjs'
import { underLoad } from './load.mjs'
import { headLine, lineOf, ratioOf, row, spreadOf, timeInTurns } from './measure.mjs'
import { writePerformance } from './page.mjs'
import { planRows } from './plans.mjs'
import { setPageRows } from './set-page.mjs'
import { stagesOf } from './stages.mjs'

const said = (name) => (process.argv.includes(name) ? process.argv[process.argv.indexOf(name) + 1] : undefined)
if (process.argv.includes('--load')) {
  await underLoad(said('--load'), Number(said('--minutes') ?? 30))
  process.exit()
}

const quick = process.argv.includes('--quick')
const turns = quick ? { rounds: 7, warmup: 5 } : { rounds: 41, warmup: 20 }
const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }
const standards = ['us-ada-2010']
const translator = createTranslator()
const drawings = signs(translator)
/** For what takes many checks. */
const few = { rounds: 15, warmup: 5 }
/** Large drawings take long enough for a few turns to tell. */
const turnsFor = (svg) => (svg.length > 100_000 ? { rounds: quick ? 3 : 9, warmup: 2 } : turns)

if (process.argv.includes('--stages')) {
  for (const [name, svg] of Object.entries(drawings))
    console.log((await stagesOf(name, svg, { translator, standards, options }, turnsFor(svg))).join('\n') + '\n')
  process.exit()
}

const lines = []

// 1. Drawings of three sizes, from bytes to report, against reading and writing the same file and against making it smaller.
const ms = (t) => `${t.median.toFixed(2)} ms (${t.least.toFixed(2)} to ${t.most.toFixed(2)})`
for (const [name, svg] of Object.entries(drawings)) {
  const bytes = Buffer.from(svg)
  const { check: ours, ...peers } = await timeInTurns(
    {
      check: () => check({ drawing: bytes, standards, options }, translator),
      'svgo parse and write': () => optimize(svg, { plugins: [] }),
      'resvg tree': () => new Resvg(svg, { font: { loadSystemFonts: false } }),
    },
    turnsFor(svg),
  )
  // It takes half a minute for the largest: once is enough, and next to nothing warms it further.
  const whole = await timeInTurns(
    { 'svgo with its default plugins': () => optimize(svg) },
    svg.length > 100_000 ? { rounds: quick ? 0 : 1, warmup: 0 } : turns,
  )
  const goals = { 'svgo parse and write': '<= 2', 'svgo with its default plugins': '<= 0.25' }
  for (const [peer, theirs] of Object.entries({ ...peers, ...whole }))
    if (theirs.all.length > 0) {
      // What was timed in other turns than ours is held against all of them.
      const ratio = ratioOf(ours, peer in peers ? theirs : { all: ours.all.map(() => theirs.median) })
      lines.push(row(`check of ${name} / ${peer}`, ratio, goals[peer] ?? '', `${ms(ours)} / ${ms(theirs)}`))
    }
}

// 2. Growth with the number of dots: time for n dots over time for 1,000, against n / 1,000.
const counts = quick ? [1_000, 10_000] : [1_000, 10_000, 100_000]
const fields = Object.fromEntries(counts.map((n) => [n, Buffer.from(fieldOfDots(n))]))
const growth = {}
for (const n of counts) {
  const question = { drawing: fields[n], standards, options }
  const rounds = n > 50_000 ? { rounds: 3, warmup: 1 } : { rounds: 9, warmup: n > 5_000 || quick ? 3 : 30 }
  const t = await timeInTurns({ run: () => check(question, translator) }, rounds)
  growth[n] = t.run
}
for (const n of counts.slice(1)) {
  const least = growth[1_000].median
  const ratio = spreadOf(growth[n].all.map((t) => t / least / (n / 1_000)))
  const note = `${growth[n].median.toFixed(1)} ms / ${least.toFixed(1)} ms`
  lines.push(row(`${n} dots: time per dot / that of 1,000 dots`, ratio, '<= 1.5', note))
}

// Plans of dots: growth, and the way against the columns and the bound.
lines.push(...(await planRows(quick)))
lines.push(...(await correctionRows(translator, standards, options, quick ? turns : few)))

// 3. Making a drawing, its own check included.
lines.push(...(await madeRows(translator, standards, options, quick ? turns : few)))

// The page of a large set.
lines.push(...(await setPageRows(translator, quick ? turns : few)))

// 4. A JSON check over HTTP, against a route that validates the same body and answers nothing. Every request differs.
const example = JSON.parse(readFileSync(new URL('./sign.json', import.meta.url), 'utf8'))
const load = async (url) => {
  let n = 0
  const requests = [
    {
      method: 'POST',
      path: '/v1/checks',
      headers: { 'content-type': 'application/json' },
      setupRequest: (r) => ({
        ...r,
        body: JSON.stringify({ ...example, sign: { ...example.sign, mark: `K-${n++}` } }),
      }),
    },
  ]
  const result = await autocannon({ url, connections: 8, duration: quick ? 3 : 8, requests })
  if (result.non2xx > 0) throw new Error(`${result.non2xx} answers were not 2xx`)
  return result.requests.average
}
const empty = Fastify({ logger: false })
empty.setValidatorCompiler(validatorCompiler)
empty.setSerializerCompiler(serializerCompiler)
empty.post('/v1/checks', { schema: { body: CheckRequest } }, async () => '')
await empty.listen({ port: 0, host: '127.0.0.1' })
const service = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent' }, { translator })
await service.listen({ port: 0, host: '127.0.0.1' })
const at = (app) => `http://127.0.0.1:${app.server.address().port}`
const rates = { empty: [], check: [] }
for (let i = 0; i < (quick ? 1 : 3); i++) {
  rates.empty.push(await load(at(empty)))
  rates.check.push(await load(at(service)))
}
const best = (list) => Math.max(...list)
lines.push(
  row(
    'JSON checks per second / empty route, same body and schema',
    spreadOf(rates.check.map((r, i) => r / rates.empty[i])),
    '>= 0.5',
    `${best(rates.check).toFixed(0)}/s / ${best(rates.empty).toFixed(0)}/s`,
  ),
)
await empty.close()
await service.close()

console.log([headLine(), ...lines.map(lineOf)].join('\n'))
if (!quick) writePerformance(lines)
