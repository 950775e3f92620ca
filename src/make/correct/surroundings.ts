import type { Polyline } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import { isKnown, type BrailleBlock, type Lettering, type Sign } from '../../sign/sign.js'
import type { Report } from '../../report/schema.js'
import { linesOf, type Frame } from '../../measure/frame.js'
import { cornersOf, type Obstacle, type Wish } from './room.js'
import { rowsInForce } from './sheet.js'

/** What braille keeps away from on a sign, and how far: what the rows in force ask, and a little where none asks. */

/** Where no row in force says how far, millimetres; common practice, no source: nothing touches a dot. */
const LEAST = 1
/** Between the nearest dots of two blocks, so that neither reads as a line of the other. Millimetres, our choice. */
const BETWEEN_BLOCKS = 5

/** The least distance that rows in force ask for, and how far to stay inside of it; undefined when none asks. */
function askedFor(report: Report, quantity: string, inside: number): number | undefined {
  const ends = rowsInForce(report, [quantity]).flatMap(({ limit }) => limit.min ?? [])
  return ends.length === 0 ? undefined : Math.max(...ends) + inside
}

/**
 * @param text the characters that the block repeats
 * @param inside how far to stay inside of limits, millimetres
 */
export function wishFor(
  block: BrailleBlock,
  text: readonly Lettering[],
  { sign, report, frame }: { sign: Sign; report: Report; frame: Frame },
  { radius, inside }: { radius: number; inside: number },
): Wish {
  const outlinesOf = (lettering: Lettering): Polyline[] => {
    const drawn = lettering.lines.flatMap(({ outlines }) => outlines)
    return drawn.length > 0 ? drawn : boxesOfLines(lettering)
  }
  const obstacles: Obstacle[] = []
  const keep = (outlines: readonly Polyline[], least: number, kind: Obstacle['kind'] = 'solid') => {
    if (outlines.length > 0) obstacles.push({ outlines, least, kind })
  }
  const fromCharacters = askedFor(report, 'braille.characterClearance', inside)
  for (const lettering of sign.lettering)
    keep(outlinesOf(lettering), lettering.part === 'visual' ? LEAST : (fromCharacters ?? LEAST))
  const fromBorder = askedFor(report, 'braille.borderClearance', inside)
  for (const border of sign.borders) {
    const outlines = border.outlines.length > 0 ? border.outlines : [cornersOf(border.box)]
    const raised = !isKnown(border.raised) || border.raised.value
    keep(outlines, raised ? (fromBorder ?? LEAST) : LEAST, 'edge')
  }
  for (const { field } of sign.pictograms) if (isKnown(field)) keep([cornersOf(field.value)], LEAST)
  for (const other of sign.braille)
    if (other !== block)
      keep(
        other.lines.flatMap(({ dots }) => dots.map((dot) => [dot])),
        BETWEEN_BLOCKS,
      )
  if (sign.panel.place.box) keep([cornersOf(sign.panel.place.box)], LEAST, 'frame')
  const origin = frame.of({ x: 0, y: 0 })
  const [right, down] = [frame.of({ x: 1, y: 0 }), frame.of({ x: 0, y: 1 })]
  return {
    obstacles,
    radius,
    down: { x: right.y - origin.y, y: down.y - origin.y },
    top: topFor(text, report, frame, inside),
  }
}

const boxesOfLines = ({ lines }: Lettering): Polyline[] =>
  lines.flatMap(({ place: { box } }) => (box ? [cornersOf(box)] : []))

/** Below the last baseline of the text where a row asks for it, and as far below as rows ask. */
function topFor(text: readonly Lettering[], report: Report, frame: Frame, inside: number): Wish['top'] {
  const below = rowsInForce(report, ['braille.position']).length > 0
  const gap = rowsInForce(report, ['braille.textGap']).flatMap(({ limit, verdict }) =>
    verdict === 'undetermined' ? [] : [limit],
  )
  if (!below && gap.length === 0) return {}
  const baselines = text.flatMap((lettering) => {
    const extents = linesOf(lettering, frame)
    return lettering.lines.flatMap(({ baseline }, i) =>
      isKnown(baseline) ? frame.of(baseline.value).y : (extents[i]?.bottom ?? []),
    )
  })
  if (baselines.length === 0) return {}
  const last = Math.max(...baselines)
  const least = Math.max(0, ...gap.map(({ min }) => min ?? 0))
  const most = Math.min(Infinity, ...gap.map(({ max }) => max ?? Infinity))
  const room = Math.max(0, Math.min(inside, (most - least) / 2))
  return { min: last + least + room, ...(Number.isFinite(most) && { max: last + most - room }) }
}

/** Points of the frame as points of the drawing: the frame turns, or turns and mirrors, and does neither stretch nor shift. */
export function fromFrame(frame: Frame): (point: Point) => Point {
  const [right, down] = [frame.of({ x: 1, y: 0 }), frame.of({ x: 0, y: 1 })]
  return ({ x, y }) => ({ x: x * right.x + y * right.y, y: x * down.x + y * down.y })
}
