// Median times of the processor in one process, so that waiting for a busy machine does not count. Only ratios between things
// timed in the same run are worth anything.

export const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2
}

/** The median, and what the middle half of the values lies between. */
export function spreadOf(values) {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (share) => sorted[Math.round(share * (sorted.length - 1))]
  return { median: median(values), low: at(0.25), high: at(0.75) }
}

/**
 * Of two things timed in turns: each round's ratio for itself, for a busy moment meets both; and that of the best rounds, which is worth
 * less as a figure and moves less on a machine that others use too.
 */
export const ratioOf = (ours, theirs) => ({
  ...spreadOf(ours.all.map((t, i) => t / theirs.all[i])),
  best: Math.min(...ours.all) / Math.min(...theirs.all),
})

/** In a millisecond. */
const MICROSECONDS = 1000

/** Times every function in turns (a b c a b c …), so that a drift of the machine meets all alike. Milliseconds. */
export async function timeInTurns(functions, { rounds, warmup }) {
  const times = Object.fromEntries(Object.keys(functions).map((name) => [name, []]))
  for (let round = -warmup; round < rounds; round++) {
    for (const [name, run] of Object.entries(functions)) {
      const started = process.cpuUsage()
      await run()
      const { user, system } = process.cpuUsage(started)
      if (round >= 0) times[name].push((user + system) / MICROSECONDS)
    }
  }
  return Object.fromEntries(
    Object.entries(times).map(([name, t]) => [
      name,
      { median: median(t), least: Math.min(...t), most: Math.max(...t), all: t },
    ]),
  )
}

/**
 * One thing held against another.
 * @param ratio a number, or the spread of several
 * @param goal what the ratio is to be, if there is a goal
 */
export const row = (what, ratio, goal, note) => ({
  what,
  ratio: typeof ratio === 'number' ? spreadOf([ratio]) : ratio,
  goal,
  note,
})

export const lineOf = ({ what, ratio, goal, note }) => line(what, ratio.median.toFixed(2), goal, note)
export const headLine = () => line('what', 'ratio', 'goal', 'medians')
const line = (what, ratio, goal, note) => `${what.padEnd(72)} ${ratio.padStart(7)}   ${goal.padEnd(10)} ${note}`
