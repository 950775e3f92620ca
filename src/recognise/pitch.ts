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

/** Another pitch explains the columns as well when its tally is at least this share of the best one. */
const AS_WELL = 0.97
/** A rough step misses the top of a tally by so much at most. */
const ROUGHLY_AS_WELL = 0.85
/** Pitches nearer to each other than this are one. */
const APART = 0.2
const MOST_PITCHES = 3

/**
 * The cell pitches that explain most differences between columns: one or two pitches, more or less a dot spacing. Two cells with
 * three columns leave open whether the odd one is a left or a right one, and so which of two pitches is theirs.
 * @returns the best first; none when no difference shows one
 */
export function pitchesOf(lines: number[][]): number[] {
  const differences: number[] = []
  for (const columns of lines)
    for (let i = 0; i < columns.length; i++)
      for (let j = i + 1; j < Math.min(columns.length, i + 1 + COLUMNS_AHEAD); j++) {
        const difference = columns[j] - columns[i]
        if (difference > SHORTEST_DIFFERENCE && difference < LONGEST_DIFFERENCE) differences.push(difference)
      }
  if (differences.length === 0) return []
  const { from, to, step, fineStep } = PITCHES
  const counted = countedOnce(differences)
  const found: Tally[] = []
  for (const rough of tallies(counted, from, to, step).sort((a, b) => b.tally - a.tally)) {
    if (found.length > 0 && rough.tally < ROUGHLY_AS_WELL * found[0].tally) break
    if (found.some(({ pitch }) => Math.abs(pitch - rough.pitch) < APART)) continue
    found.push(best(tallies(counted, rough.pitch - step, rough.pitch + step, fineStep)))
  }
  found.sort((a, b) => b.tally - a.tally)
  const good = found.filter(({ tally }) => tally > 0 && tally >= AS_WELL * found[0].tally)
  return good.slice(0, MOST_PITCHES).map(({ pitch }) => pitch)
}

interface Counted {
  value: number
  count: number
}

interface Tally {
  pitch: number
  tally: number
}

/** Values with how often they occur; ones that only rounding tells apart are one. On a clean drawing there are few. */
function countedOnce(values: number[]): Counted[] {
  const counted: Counted[] = []
  for (const value of new Float64Array(values).sort()) {
    const last = counted.at(-1)
    if (last && value - last.value < ROUNDING) last.count++
    else counted.push({ value, count: 1 })
  }
  return counted
}

const best = (all: readonly Tally[]): Tally => all.reduce((a, b) => (b.tally > a.tally ? b : a))

function tallies(differences: readonly Counted[], from: number, to: number, step: number): Tally[] {
  const all: Tally[] = []
  for (let pitch = from; pitch <= to; pitch += step) {
    let tally = 0
    for (const { value: difference, count } of differences) {
      const cells = Math.max(1, Math.floor(difference / pitch + 0.5))
      const over = Math.abs(difference - cells * pitch)
      const off = Math.min(over, Math.abs(over - 1))
      if (off < PITCH_WIDTH) tally += (count * (1 - off / PITCH_WIDTH)) / cells
    }
    all.push({ pitch, tally })
  }
  return all
}
