// How the time of a dot plan grows with the dots, and what the way is against the columns from left to right and the bound.
import { planDots } from '../../dist/make/dot-plan/plan.js'
import { row, timeInTurns } from './measure.mjs'

const SETTINGS = {
  head: { tipDiameter: 1, bodyDiameter: 12, bodyClearance: 6, lift: 3, plunge: 2.5 },
  machine: { travelRate: 3000, plungeRate: 1000, dwell: 0.2 },
  dot: { baseDiameter: 1.55, height: 0.7 },
}
const HEADS = { 'straight down': {}, 'from the side': { approach: { angle: 0, length: 4, height: 1 } } }

/** Cells of braille, some blank, always the same: an invented picture. */
function picture(count) {
  let state = 1
  const next = () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32
  const columns = Math.ceil(Math.sqrt(count / 3) * 1.25)
  const dots = []
  for (let line = 0; dots.length < count; line++)
    for (let cell = 0; cell < columns; cell++) {
      if (next() < 0.15) continue
      for (let dot = 0; dot < 6 && dots.length < count; dot++)
        if (next() < 0.6) dots.push({ x: cell * 6.2 + (dot > 2 ? 2.4 : 0), y: line * 10 + (dot % 3) * 2.4 })
    }
  return dots
}

const TEXT = `A plan of dots is the order in which a machine sets them: its time is held against *n* log *n* from the smallest plan on, its way against
going through the dots column by column, and against a length that no way can be shorter than.`

export const planSection = async ({ quick }) => ({ title: 'Plans of dots', text: TEXT, rows: await planRows(quick) })

/** Against n log n, which the time is to stay near: 1 is that growth, more is faster. */
async function planRows(quick) {
  const counts = quick ? [5_000, 20_000] : [5_000, 20_000, 100_000]
  const lines = []
  for (const [name, head] of Object.entries(HEADS)) {
    const settings = { ...SETTINGS, head: { ...SETTINGS.head, ...head } }
    let first
    for (const n of counts) {
      const dots = picture(n)
      let plan
      const { run } = await timeInTurns(
        { run: () => (plan = planDots({ dots, of: 'points' }, settings)) },
        { rounds: 3, warmup: 1 },
      )
      first ??= run.median
      const due = (n * Math.log(n)) / (counts[0] * Math.log(counts[0]))
      const time = `${(run.median / 1000).toFixed(2)} s`
      lines.push(row(`plan of ${n} dots, ${name}: time / n log n`, run.median / first / due, '<= 1.5', time))
      lines.push(
        row(
          `plan of ${n} dots, ${name}: travel / columns from left to right`,
          plan.travel / plan.baselineTravel,
          '<= 1',
          '',
        ),
      )
      lines.push(row(`plan of ${n} dots, ${name}: travel / lower bound`, plan.travel / plan.travelLowerBound, '', ''))
    }
  }
  return lines
}
