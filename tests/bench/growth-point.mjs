// One point of a curve, in a process of its own: what is checked, and how much of it, come as arguments. It says how many milliseconds
// of the processor one check takes, and how many megabytes were resident at most, over what was resident when all was loaded and warm.
import { createTranslator } from '../../dist/braille/engine.js'
import { check } from '../../dist/check.js'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'
import { fieldOfDots, signOfBytes } from './drawings.mjs'
import { timeInTurns } from './measure.mjs'

const [what, size, rounds] = process.argv.slice(2)
const n = Number(size)
const translator = createTranslator()
const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }
const small = signOfBytes(4_000, translator)

/** Beside a small sign, triangles that belong to no letter and to no dot, each an element. */
function withElements(count) {
  const across = Math.ceil(Math.sqrt(count))
  const one = (i) => `<path d="M${(i % across) * 4} ${1000 + Math.floor(i / across) * 4}l3 1-2 2z"/>`
  const others = Array.from({ length: count }, (_, i) => one(i)).join('')
  return small.replace('</svg>', `<g id="ignore">${others}</g></svg>`)
}

/** About as many letters: one takes some bytes, its dots included. */
const BYTES_PER_LETTER = 480
const ofLetters = (count) => signOfBytes(count * BYTES_PER_LETTER, translator, { roomsPerLine: 4 })
const checked = (svg) => () => check({ drawing: Buffer.from(svg), standards: ['us-ada-2010'], options }, translator)

async function handingIn(count) {
  const app = await buildService({ ...DEFAULT_SETTINGS, logLevel: 'silent', role: 'api' }, { translator })
  const signs = Array.from({ length: count }, (_, i) => ({
    mark: `S-${i + 1}`,
    sign: { use: 'permanent-room', lettering: [{ text: `ROOM ${i}` }] },
  }))
  return async () => {
    const payload = { name: `${count} signs`, signs }
    const { statusCode, body } = await app.inject({ method: 'POST', url: '/v1/submittals', payload })
    if (statusCode !== 202) throw new Error(body)
  }
}

const WORK = {
  elements: (count) => checked(withElements(count)),
  dots: (count) => checked(fieldOfDots(count)),
  letters: (count) => checked(ofLetters(count)),
  signs: handingIn,
}

const KILOBYTES = 1024
const most = () => process.resourceUsage().maxRSS / KILOBYTES
// The smallest work of the same kind warms everything up.
const first = await WORK[what](what === 'signs' ? 10 : 100)
for (let i = 0; i < 30; i++) await first()
const run = await WORK[what](n)
const before = most()
await run()
const peak = most() - before
// Small work has to be repeated until it is compiled as well as large work is by the end of its first run.
const WARM = 2_000_000
const used = () => Object.values(process.cpuUsage()).reduce((a, b) => a + b)
for (const started = used(); used() - started < WARM;) await run()
const { one } = await timeInTurns({ one: run }, { rounds: Number(rounds), warmup: 0 })
process.stdout.write(JSON.stringify({ ms: one.median, peak }))
process.exit()
