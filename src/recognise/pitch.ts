/**
 * The cell pitch of lines of braille from the positions of their columns, all in dot spacings. Columns of near cells differ by
 * whole pitches, or by a dot spacing more or less; the pitch is the one that the most differences agree with.
 */

/** Cell pitches that are tried, in dot spacings: the widest cell over the nearest dots and the other way round, with room. */
const PITCHES = { from: 2.25, to: 3.75, step: 0.02, fineStep: 0.004 } as const
/** Sharpness of the pitch's tally. */
const PITCH_WIDTH = 0.12
/** Differences up to this many columns ahead and this long show the pitch. */
const COLUMNS_AHEAD = 5
const LONGEST_DIFFERENCE = 8.3
/** Shorter differences are those of the two columns of one cell. */
const SHORTEST_DIFFERENCE = 1.2
/** Dot spacings: coordinates are written with three decimals of a millimetre or more. */
const ROUNDING = 1e-4

/** The cell pitch that explains most differences between columns: one or two pitches, more or less a dot spacing. */
export function pitchOf(lines: number[][]): number | undefined {
  const differences: number[] = []
  for (const columns of lines)
    for (let i = 0; i < columns.length; i++)
      for (let j = i + 1; j < Math.min(columns.length, i + 1 + COLUMNS_AHEAD); j++) {
        const difference = columns[j] - columns[i]
        if (difference > SHORTEST_DIFFERENCE && difference < LONGEST_DIFFERENCE) differences.push(difference)
      }
  if (differences.length === 0) return undefined
  const { from, to, step, fineStep } = PITCHES
  const counted = countedOnce(differences)
  const rough = bestPitch(counted, from, to, step)
  return rough === undefined ? undefined : bestPitch(counted, rough - step, rough + step, fineStep)
}

/** Values with how often they occur; ones that only rounding tells apart are one. On a clean drawing there are few. */
function countedOnce(values: number[]): { value: number; count: number }[] {
  const counted: { value: number; count: number }[] = []
  for (const value of new Float64Array(values).sort()) {
    const last = counted.at(-1)
    if (last && value - last.value < ROUNDING) last.count++
    else counted.push({ value, count: 1 })
  }
  return counted
}

function bestPitch(
  differences: readonly { value: number; count: number }[],
  from: number,
  to: number,
  step: number,
): number | undefined {
  let best: number | undefined
  let most = 0
  for (let pitch = from; pitch <= to; pitch += step) {
    let tally = 0
    for (const { value: difference, count } of differences) {
      const cells = Math.max(1, Math.floor(difference / pitch + 0.5))
      const over = Math.abs(difference - cells * pitch)
      const off = Math.min(over, Math.abs(over - 1))
      if (off < PITCH_WIDTH) tally += (count * (1 - off / PITCH_WIDTH)) / cells
    }
    if (tally > most) {
      most = tally
      best = pitch
    }
  }
  return best
}
