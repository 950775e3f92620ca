import { dotsOfLine, lineWidth } from '../../braille/cells.js'
import type { Point } from '../../geometry/point.js'
import { linesOf, type Frame } from '../../measure/frame.js'
import { isKnown, type Alignment, type BrailleBlock, type Lettering } from '../../sign/sign.js'
import type { BlockSizes } from './sizes.js'
import { fromFrame } from './surroundings.js'

/** The lines of a block set anew where the block stood: its first row of dots stays, and so does the edge or middle that it kept. */

const ROWS_BELOW = 2

interface Ends {
  left: number
  right: number
}

/** Ends of the lines of a block as its cells, and its first row of dots, in the frame; undefined when they are not known. */
function placeOf(
  { lines, dotSpacing, cellSpacing }: BrailleBlock,
  frame: Frame,
): { ends: Ends[]; top: number } | undefined {
  if (!isKnown(dotSpacing) || !isKnown(cellSpacing)) return undefined
  const spacing = { dotSpacing: dotSpacing.value, cellSpacing: cellSpacing.value, lineSpacing: 0 }
  const ends: Ends[] = []
  const tops: number[] = []
  for (const { baseline, cells, dots } of lines) {
    const across = dots.map((dot) => frame.of(dot))
    if (isKnown(baseline) && isKnown(cells)) {
      const { x, y } = frame.of(baseline.value)
      ends.push({ left: x, right: x + lineWidth(Array.from(cells.value).length, spacing) })
      tops.push(y - ROWS_BELOW * dotSpacing.value)
    } else if (across.length > 0) {
      ends.push({ left: Math.min(...across.map(({ x }) => x)), right: Math.max(...across.map(({ x }) => x)) })
      tops.push(Math.min(...across.map(({ y }) => y)))
    }
  }
  return ends.length === 0 ? undefined : { ends, top: Math.min(...tops) }
}

const middle = ({ left, right }: Ends): number => (left + right) / 2

/** The ways that tell where a line starts. */
export type Way = Exclude<Alignment, 'other'>

const AT: Record<Way, (ends: Ends) => number> = {
  'flush-left': ({ left }) => left,
  centred: middle,
  'flush-right': ({ right }) => right,
}
const WAYS: readonly Way[] = ['centred', 'flush-left', 'flush-right']

/** How the lines of a block stand among each other, or an only line under its text: the way in which they are least off. */
function alignmentOf(own: readonly Ends[], text: readonly Ends[]): Way {
  const others = own.length > 1 ? own : [...own, ...text]
  const off = (way: Way): number => {
    const at = others.map(AT[way])
    return Math.max(...at) - Math.min(...at)
  }
  return WAYS.reduce((best, way) => (off(way) < off(best) - LITTLE ? way : best))
}

/** Ways that differ by less are the same, millimetres. */
const LITTLE = 0.2

/**
 * The dots of lines of cells in the drawing's coordinates.
 * @param asked how the braille has to stand under its text, where it does not stand so
 * @returns undefined when the place of the block is not known
 */
export function setBlock(
  block: BrailleBlock,
  text: readonly Lettering[],
  frame: Frame,
  { sizes, cells, asked }: { sizes: BlockSizes; cells: readonly string[]; asked?: Way },
): Point[] | undefined {
  const place = placeOf(block, frame)
  if (!place) return undefined
  const of = text.flatMap((lettering) => linesOf(lettering, frame).filter((line) => line !== undefined))
  const bounded = of.filter(({ right }) => Number.isFinite(right))
  const way = asked ?? alignmentOf(place.ends, bounded)
  const around = asked && bounded.length > 0 ? bounded : place.ends
  const whole: Ends = {
    left: Math.min(...around.map(({ left }) => left)),
    right: Math.max(...around.map(({ right }) => right)),
  }
  const back = fromFrame(frame)
  const inset = asked === 'flush-left' ? sizes.diameter / 2 : asked === 'flush-right' ? -sizes.diameter / 2 : 0
  return cells.flatMap((line, row) => {
    const width = lineWidth(Array.from(line).length, sizes)
    const start =
      way === 'centred' ? middle(whole) - width / 2 : way === 'flush-left' ? whole.left : whole.right - width
    const origin = { x: start + inset, y: place.top + row * sizes.lineSpacing }
    return dotsOfLine(line, { ...sizes, origin }).map(back)
  })
}
