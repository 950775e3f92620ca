import { centreOfBox } from '../../geometry/box.js'
import { distance } from '../../geometry/point.js'
import type { Blob } from './blobs.js'
import { readRow, type ReadRow } from './readrow.js'
import { rowsOf, type Lie } from './rows.js'

/** One way to read a set of outlines: all of them along one direction. */
export interface Attempt {
  lie: Lie
  rows: ReadRow[]
  /** How much the characters look like some on average: one for exactly like a reference, none for unrecognised. */
  quality: number
}

/** A direction in which the characters look so much like some needs no comparison with others. */
const GOOD = 0.85
/** The distance from the nearest reference at which a character counts half. */
const HALF_AS_GOOD = 12
/** Another direction is believed only when it reads so much better; another slant, when it reads better at all. */
const CLEARLY_MORE = 0.12
/** Characters that look so much like some are not mirrored ones; a little better is better when all else is equal. */
const BEYOND_DOUBT = 0.97
const BETTER = 0.02
/** Directions are compared on so many neighbouring pieces. */
const SAMPLE = 40
const QUARTER = 90

/** @param lies ways in which the lettering may lie, the likeliest first; at least one */
export function bestAttempt(blobs: readonly Blob[], lies: readonly Lie[]): Attempt {
  const first = readAlong(blobs, lies[0])
  if (first.quality >= GOOD) return first
  const sample = neighbours(blobs)
  let best = sample.length === blobs.length ? first : readAlong(sample, lies[0])
  for (const lie of lies.slice(1)) {
    if (best.quality >= GOOD) break
    const attempt = readAlong(sample, lie)
    if (attempt.quality > best.quality + (lie.rotation === best.lie.rotation ? 0 : CLEARLY_MORE)) best = attempt
  }
  if (best.lie === lies[0]) return first
  return sample.length === blobs.length ? best : readAlong(blobs, best.lie)
}

/** All blobs, or those next to the middle one when there are many: lines stay together in whatever direction they run. */
function neighbours(blobs: readonly Blob[]): readonly Blob[] {
  if (blobs.length <= SAMPLE) return blobs
  const middle = centreOfBox(blobs[Math.floor(blobs.length / 2)].box)
  const away = new Map(blobs.map((b) => [b, distance(centreOfBox(b.box), middle)]))
  return [...blobs].sort((a, b) => (away.get(a) ?? 0) - (away.get(b) ?? 0)).slice(0, SAMPLE)
}

function readAlong(blobs: readonly Blob[], lie: Lie): Attempt {
  const rows = rowsOf(blobs, lie).map(readRow)
  const decisions = rows.flatMap((r) => r.decisions)
  const likeness = decisions.reduce((sum, d) => sum + 1 / (1 + (d.distance / HALF_AS_GOOD) ** 2), 0)
  return { lie, rows, quality: likeness / Math.max(decisions.length, 1) }
}

/**
 * Why the direction or the side is in doubt, if it is: neither was told nor is the drawing's own, and another reads as well.
 * @param hint direction in degrees, when something else tells it
 */
export function doubtOf(
  { lie, quality }: Attempt,
  blobs: readonly Blob[],
  hint: number | undefined,
): string | undefined {
  const turn = Math.abs(((lie.rotation - (hint ?? 0) + 3 * 2 * QUARTER) % 360) - 180)
  const sample = neighbours(blobs)
  const qualityOf = (other: Partial<Lie>) => readAlong(sample, { ...lie, ...other }).quality
  if (turn > QUARTER / 2 && qualityOf({ rotation: (lie.rotation + 2 * QUARTER) % 360 }) > quality - CLEARLY_MORE)
    return 'the characters can be read either way up'
  const behind = { rotation: (lie.rotation + 2 * QUARTER) % 360, slant: -lie.slant, mirrored: !lie.mirrored }
  if (hint === undefined && quality < BEYOND_DOUBT && qualityOf(behind) > quality + BETTER)
    return 'the characters read better from the other side'
  return undefined
}
