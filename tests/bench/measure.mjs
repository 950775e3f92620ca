// Median times of the processor in one process, so that waiting for a busy machine does not count. Only ratios between things
// timed in the same run are worth anything.

export const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2
}

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
      { median: median(t), least: Math.min(...t), most: Math.max(...t) },
    ]),
  )
}

export const row = (name, ratio, goal, note) =>
  `${name.padEnd(58)} ${ratio.toFixed(2).padStart(7)}   ${goal.padEnd(10)} ${note}`
