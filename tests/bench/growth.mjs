// How time and memory grow with what is asked for. Each point of a curve is a process of its own (growth-point.mjs).
import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { row, spreadOf } from './measure.mjs'

const TEXT = `How time and peak memory grow: with elements that have nothing to do with a small sign, with dots of one block of braille, with raised
letters and their dots, and with the signs of a set that is handed in. Each point was measured in processes of its own. The first column of figures
is the time for one of them over that for one at the smallest size, which is 1 where growth is linear; the exponent is the slope of the line of least
squares through the logarithms of size and time. Memory is what was resident at most beyond what was resident before, per one of them, as a
share of the same at the smallest size at which it stands out from what was there.`

const CURVES = {
  elements: { sizes: [1000, 4000, 12_000, 24_000], goal: '' },
  dots: { sizes: [1000, 10_000, 30_000, 100_000], goal: '<= 1.5' },
  letters: { sizes: [100, 400, 1600], goal: '' },
  signs: { sizes: [100, 500, 2000], goal: '' },
}
const QUICK = { dots: { sizes: [1000, 20_000], goal: '<= 1.5' } }

const POINT = fileURLToPath(new URL('./growth-point.mjs', import.meta.url))
const run = promisify(execFile)
const isLarge = (size) => size > 20_000

/** @returns of `times` processes: milliseconds and megabytes */
async function pointOf(what, size, times) {
  const found = []
  for (let i = 0; i < times; i++) {
    const order = ['--disable-warning=ExperimentalWarning', POINT, what, String(size), isLarge(size) ? '2' : '7']
    found.push(JSON.parse((await run(process.execPath, order)).stdout))
  }
  return { size, ms: found.map((p) => p.ms), peak: spreadOf(found.map((p) => p.peak)).median }
}

const logOf = (values) => values.map(Math.log)
/** Slope of log time over log size, by least squares. */
function exponentOf(points) {
  const x = logOf(points.map((p) => p.size))
  const y = logOf(points.map((p) => spreadOf(p.ms).median))
  const mean = (values) => values.reduce((a, b) => a + b, 0) / values.length
  const [mx, my] = [mean(x), mean(y)]
  return x.reduce((sum, v, i) => sum + (v - mx) * (y[i] - my), 0) / x.reduce((sum, v) => sum + (v - mx) ** 2, 0)
}

/** @param base milliseconds for one at the smallest size @param best the same of the best process */
const growthOf = (ms, size, base, best) => ({
  ...spreadOf(ms.map((t) => t / size / base)),
  best: Math.min(...ms) / size / best,
})

/** Megabytes from which on a peak stands out from what was there before. */
const SEEN = 4
function memoryRow(what, points) {
  const [first, ...others] = points.filter(({ peak }) => peak >= SEEN)
  const last = others.at(-1)
  if (!last) return []
  const ratio = last.peak / last.size / (first.peak / first.size)
  const note = `${last.peak.toFixed(0)} MB / ${first.peak.toFixed(0)} MB`
  return [row(`${last.size} ${what}: peak memory for one / for one of ${first.size}`, ratio, '', note)]
}

export async function growthSection({ quick }) {
  const rows = []
  for (const [what, { sizes, goal }] of Object.entries(quick ? QUICK : CURVES)) {
    const points = []
    for (const size of sizes) points.push(await pointOf(what, size, isLarge(size) ? 1 : 2))
    const [first, ...others] = points
    const base = spreadOf(first.ms).median / first.size
    for (const { size, ms, peak } of others) {
      const note = `${spreadOf(ms).median.toFixed(1)} ms, ${peak.toFixed(0)} MB / ${(base * first.size).toFixed(1)} ms, ${first.peak.toFixed(0)} MB`
      const text = `${size} ${what}: time for one / for one of ${first.size}`
      rows.push(
        row(text, growthOf(ms, size, base, Math.min(...first.ms) / first.size), size === 100_000 ? goal : '', note),
      )
    }
    if (quick) continue
    rows.push(row(`${what}: exponent of the time, ${sizes[0]} to ${sizes.at(-1)}`, exponentOf(points), '', ''))
    rows.push(...memoryRow(what, points))
  }
  return { title: 'Growth', text: TEXT, rows }
}
