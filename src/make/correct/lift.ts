import type { Point } from '../../geometry/point.js'
import { frameOf } from '../../measure/frame.js'
import { raisedLettering } from '../../measure/lettering.js'
import { isKnown, type Lettering, type LetteringLine, type Sign } from '../../sign/sign.js'
import type { Finding } from '../../report/finding-schema.js'
import { attempt, breaking } from './attempt.js'
import type { Bench } from './bench.js'
import { NO_ROOM, placesAnew } from './braille.js'
import { brailleContours } from './marks.js'
import { addMoves, contoursWithin, moved, type Moves } from './move.js'
import { NotCorrectable } from './outcome.js'
import type { Sheet } from './sheet.js'
import { fromFrame } from './surroundings.js'
import { compared, tried, type Trial } from './trial.js'

/** Where braille has no room below its text, the raised characters go up as far as is needed, and the braille with them. */

/** How near the least way is found, millimetres. */
const STEP = 1
/** Millimetres: beyond, the layout is another one. */
const FARTHEST = 20

/** Only where a try without it has told that there is no room. */
export function lifted(sheet: Sheet, failed: readonly Finding[], bench: Bench): Trial | undefined {
  const { sign } = sheet
  if (failed.some(({ requirement }) => bench.reasons.get(requirement) !== NO_ROOM)) return undefined
  const back = fromFrame(frameOf(sign))
  const upBy = (way: number): Point => back({ x: 0, y: -way })
  const hasRoom = (way: number): boolean =>
    !(placesAnew({ ...sheet, sign: signLifted(sign, upBy(way)) }, failed, bench.translator) instanceof NotCorrectable)
  if (!hasRoom(FARTHEST)) return undefined
  // The farther up the characters, the more room there is.
  let [short, enough] = [0, FARTHEST]
  while (enough - short > STEP) {
    const way = (short + enough) / 2
    if (hasRoom(way)) enough = way
    else short = way
  }
  return withCharacters(sheet, failed, bench, upBy(enough))
}

function withCharacters(sheet: Sheet, failed: readonly Finding[], bench: Bench, by: Point): Trial | undefined {
  const { sign, written } = sheet
  const dots = brailleContours(sign, written.drawing)
  const moves: Moves = new Map()
  for (const { lettering } of raisedLettering(sign))
    for (const { place } of lettering.lines)
      if (place.box) addMoves(moves, contoursWithin(written, place.box, dots), by)
  const rewrite = moved(written, moves)
  if (rewrite instanceof NotCorrectable) return undefined
  const higher = tried(sheet, rewrite, bench)
  const whole = higher && attempt(higher.sheet, failed, bench)
  if (!whole) return undefined
  const outcome = compared(sheet.report, whole.sheet.report)
  if (outcome.broken.length === 0) return { ...whole, ...outcome }
  for (const { requirement } of failed) bench.reasons.set(requirement, breaking(outcome.broken))
  return undefined
}

/** The sign as it would be with its raised characters elsewhere. */
function signLifted(sign: Sign, by: Point): Sign {
  const there = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y })
  const line = (one: LetteringLine): LetteringLine => ({
    ...one,
    baseline: isKnown(one.baseline) ? { ...one.baseline, value: there(one.baseline.value) } : one.baseline,
    outlines: one.outlines.map((outline) => outline.map(there)),
    place: { ...one.place, ...(one.place.box && { box: { ...one.place.box, ...there(one.place.box) } }) },
  })
  const up = (one: Lettering): Lettering => (one.part === 'visual' ? one : { ...one, lines: one.lines.map(line) })
  return { ...sign, lettering: sign.lettering.map(up) }
}
