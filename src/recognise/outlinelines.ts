import type { Loop } from '../geometry/loop.js'
import type { Point } from '../geometry/point.js'
import { isKnown } from '../sign/sign.js'
import { isOneSided, leftOpen, otherWays, saysAnother } from './eitherway.js'
import type { LetterOutline } from './letters/blobs.js'
import { readLetters, type LetteringReading, type ReadCharacter, type ReadLine } from './letters/read.js'
import type { Lie as ReadLie } from './letters/rows.js'
import type { Piece } from './pieces.js'
import { regionsOf } from './regions.js'

/**
 * Lines of outlined letters. All outlines are read at once, if need be from the other side; what is not read so is read again
 * region by region, for large and small letters side by side, or letters beside art, make no line together.
 */
export interface OutlinedLines {
  lines: OutlinedLine[]
  lie: ReadLie
  mirrored: boolean
  limitReached: boolean
}

export interface OutlinedLine {
  read: ReadLine
  /** Left end of the baseline, in the drawing. */
  start: Point
  pieces: Piece[]
  /** Its text is open only because it reads another way round too. */
  eitherWay?: true
}

export interface Expectation {
  /** Reading direction of the braille on the drawing, if there is any: clockwise from its x axis, in degrees. */
  rotation?: number
  mirrored: boolean
  /** Words of the braille. */
  words: readonly string[]
  /** Something else shows which end of the drawing is up. */
  upright?: boolean
}

/** Fewer recognised characters than this share: perhaps the drawing is seen from behind. */
const HARDLY_READ = 0.5
/** Corners of one outline, curves flattened, that are looked at: a traced letter has some hundreds. */
const MOST_CORNERS = 5000
/** Corners of all outlines together: more are no lettering of a sign. */
const MOST_CORNERS_IN_ALL = 150_000

export function readLines(pieces: readonly Piece[], expectation: Expectation): OutlinedLines {
  const readable = pieces.filter(isReadable)
  const corners = readable.reduce((n, piece) => n + piece.corners.length / 2, 0)
  const { mirrored } = expectation
  const nothing = { lines: [], lie: { rotation: 0, slant: 0, mirrored: false }, mirrored, limitReached: true }
  if (corners > MOST_CORNERS_IN_ALL) return nothing
  const attempts: Attempt[] = []
  for (const side of [mirrored, !mirrored]) {
    const attempt = readOnce(readable, expectation, side)
    if (attempts.length === 0 || mirrored || isOneSided(attempt.lines)) attempts.push(attempt)
    // Many letters are their own mirror image: mirrored braille does not prove that they are mirrored too.
    const settled = !mirrored && attempt.recognised >= HARDLY_READ * readable.length && attempt.known > 0
    if (attempt.reading.limitReached || settled) break
  }
  const better = (a: Attempt, b: Attempt) => b.known > a.known || (b.known === a.known && b.recognised > a.recognised)
  const best = attempts.reduce((a, b) => (better(a, b) ? b : a))
  const { lie, limitReached } = best.reading
  const lines = withRegions(best, readable, expectation)
  const told = isEitherWay(lines, best, expectation) ? leftOpen(lines) : lines
  return { lines: told, lie, mirrored: best.mirrored, limitReached }
}

/** Whether the lines say something else upside down or from behind, and nothing else shows which is meant. */
function isEitherWay(
  lines: readonly OutlinedLine[],
  { reading, mirrored }: Attempt,
  expectation: Expectation,
): boolean {
  if (expectation.rotation !== undefined || expectation.upright) return false
  const pieces = lines.flatMap((line) => line.pieces)
  const { rotation } = reading.lie
  const direction = mirrored ? HALF_TURN - rotation : rotation
  return otherWays(lines).some(({ turned, behind }) => {
    const other = direction + (turned === behind ? 0 : HALF_TURN)
    const again = readOnce(pieces, { ...expectation, rotation: other }, mirrored !== behind)
    return saysAnother(lines, again.lines)
  })
}

const HALF_TURN = 180

interface Attempt {
  reading: LetteringReading
  lines: OutlinedLine[]
  mirrored: boolean
  /** Outlines of characters that were recognised, and of those in lines whose text is known. */
  recognised: number
  known: number
}

/** A contour that bounds an area; lines that end somewhere do not. */
const isReadable = ({ contour, shape, corners }: Piece): boolean =>
  corners.length / 2 > 2 &&
  corners.length / 2 <= MOST_CORNERS &&
  (contour.closed || (shape.fill !== undefined && shape.fill.opacity > 0))

const flipped = ({ x, y }: Point): Point => ({ x: -x, y })
const mirrorImage = (corners: Loop): Loop => corners.map((value, i) => (i % 2 === 0 ? -value : value))

function readOnce(pieces: readonly Piece[], { rotation, words }: Expectation, mirrored: boolean): Attempt {
  const outlines = pieces.map(({ corners, order, shape }): LetterOutline => {
    const painted = shape.fill !== undefined && shape.fill.opacity > 0
    return {
      corners: mirrored ? mirrorImage(corners) : corners,
      path: order,
      rule: shape.fillRule,
      ...(painted && { fill: shape.fill?.written }),
    }
  })
  const direction = rotation !== undefined && mirrored ? 180 - rotation : rotation
  const reading = readLetters(outlines, { rotation: direction, expected: words })
  const lines = reading.lines.map((read): OutlinedLine => ({
    read,
    start: mirrored ? flipped(read.start) : read.start,
    pieces: read.outlines.map((i) => pieces[i]),
  }))
  const count = (among: readonly OutlinedLine[]) =>
    among.flatMap(({ read }) => read.characters.filter(isRecognised)).reduce((sum, c) => sum + c.outlines.length, 0)
  const known = count(lines.filter(({ read }) => isKnown(read.text)))
  return { reading, lines, mirrored, recognised: count(lines), known }
}

export const isRecognised = ({ readings }: Pick<ReadCharacter, 'readings'>): boolean => readings.length > 0

export const isWhollyRecognised = ({ read }: OutlinedLine): boolean => read.characters.every(isRecognised)

/** The lines, with those that were not wholly recognised read again by regions where that reads them wholly. */
function withRegions(
  { lines, reading, mirrored }: Attempt,
  pieces: readonly Piece[],
  expectation: Expectation,
): OutlinedLine[] {
  const good = lines.filter(isWhollyRecognised)
  const used = new Set(good.flatMap((line) => line.pieces))
  const left = pieces.filter((p) => !used.has(p))
  const regions = regionsOf(left)
  const same = regions.length === 1 && left.length === pieces.length
  if (reading.limitReached || left.length === 0 || same) return lines
  const { rotation } = reading.lie
  const direction = mirrored ? 180 - rotation : rotation
  const again = regions.flatMap((region) => {
    const attempt = readOnce(region, { ...expectation, rotation: direction }, mirrored)
    const turned = Math.abs(((attempt.reading.lie.rotation - rotation + 540) % 360) - 180)
    return turned > SAME_DIRECTION ? [] : attempt.lines.filter(isWhollyRecognised)
  })
  const taken = new Set(again.flatMap((line) => line.pieces))
  // A line of which a part was read again is told by that part alone.
  const kept = lines.filter((line) => !line.pieces.some((p) => taken.has(p)))
  return [...kept, ...again].sort((a, b) => a.read.baseline - b.read.baseline)
}

/** Degrees within which a region runs as the whole does. */
const SAME_DIRECTION = 2
