import { attributeSet, beforeEnd, removal, type Edit } from '../../drawing/rewrite.js'
import type { WrittenDrawing } from '../../drawing/source-text.js'
import { withSubpaths } from '../../drawing/subpaths.js'
import { flatten } from '../../geometry/curve.js'
import type { Point } from '../../geometry/point.js'
import { signedArea } from '../../geometry/polyline.js'
import type { Dot } from '../../recognise/dots.js'
import { dotGroup, dotSubpath, type NewDot } from './dot-markup.js'
import { contoursOf, ownersOf } from './marks.js'
import { NO_CHANGE, NotCorrectable, type Rewrite } from './outcome.js'
import { decimalsFor, pathOf, type PathOwner } from './path-owner.js'

/** New dots of blocks in the place of old ones, in the text of a drawing. */

const SHARED =
  'The dots are drawn by an element that draws other things too, and cannot be parted from them. Draw the braille on its own.'
const NOT_FOUND = 'The elements that draw the dots were not found in the text of the drawing.'
const WIDE_STROKE = 'The dots are painted as strokes, which are wider than a dot may be.'

/** One block: the outlines that go, and the dots that come. */
export interface Redrawn {
  old: readonly Dot[]
  /** Middles of the dots. */
  dots: readonly Point[]
  diameter: number
  /** How wide the old dots were read to be, which tells whether a stroke round them counts. */
  measured: number
}

/**
 * Elements that draw dots and nothing else go, and a group of circles comes at the end of the drawing. Where a path draws the dots
 * together with other things, its data are changed instead.
 * @param named whether the new dots are named as braille
 */
export function redrawn(written: WrittenDrawing, blocks: readonly Redrawn[], named: boolean): Rewrite | NotCorrectable {
  const removed = contoursOf(blocks.flatMap(({ old }) => old))
  const owners = ownersOf(removed, written)
  if (!owners) return new NotCorrectable(NOT_FOUND)
  const shared = owners.filter(({ isWhole }) => !isWhole).map((owner) => pathOf(owner, written))
  const paths = shared.filter((path) => path !== undefined)
  if (paths.length < shared.length) return new NotCorrectable(SHARED)
  const likes = blocks.map(({ old }) => asFill(old[0]))
  const dots = blocks.map(({ dots: middles, diameter, measured }, i) =>
    middles.map(({ x, y }): NewDot => ({ x, y, width: diameter - strokeOf(likes[i], measured) })),
  )
  const added = dots.flat()
  if (added.some(({ width }) => !(width > 0))) return new NotCorrectable(WIDE_STROKE)
  const edits: Edit[] = owners.flatMap((owner) => (owner.isWhole ? removal(written.text, owner.written) : []))
  for (const [i, path] of paths.entries()) {
    const data = inPath(path, removed.get(path.shape) ?? new Set(), i === 0 ? added : [])
    if (data === undefined) return new NotCorrectable(SHARED)
    edits.push(attributeSet(written.text, path.owner.written, 'd', data))
  }
  if (paths.length === 0) edits.push(...likes.map((like, i) => inGroup(written, dots[i], like, named)))
  return { ...NO_CHANGE, edits, removed, added }
}

/** A dot that is a round end of a stroke, and no more, as a filled one of the same colour. */
function asFill(dot: Dot): Dot {
  const { fill, stroke, ...shape } = dot.shape
  const isEnd = !fill && stroke !== undefined && stroke.linecap === 'round' && stroke.width > END * dot.diameter
  return isEnd ? { ...dot, shape: { ...shape, fill: stroke } } : dot
}

/** A ring has a hole: its stroke is at most half as wide as the whole. */
const END = 0.75

/** The width of the stroke that is painted round a dot, where it was read as a part of the dot. */
function strokeOf({ shape: { stroke }, diameter }: Dot, measured: number): number {
  const width = stroke && stroke.opacity > 0 ? stroke.width : 0
  return Math.abs(diameter - measured) <= Math.abs(diameter - width - measured) ? width : 0
}

function inPath(
  { data, shape, space }: PathOwner,
  gone: ReadonlySet<number>,
  added: readonly NewDot[],
): string | undefined {
  const left = withSubpaths(data, (index) => (gone.has(index) ? 'remove' : undefined), decimalsFor(space))
  if (left === undefined) return undefined
  const [first] = gone
  const clockwise = signedArea(flatten(shape.contours[first])) > 0
  return [left, ...added.map((dot) => dotSubpath(dot, space, clockwise))].join(' ').trim()
}

function inGroup({ text, root, spaceOf }: WrittenDrawing, added: readonly NewDot[], like: Dot, named: boolean): Edit {
  const space = spaceOf(root.element)
  if (!space) throw new Error('the outermost element has no space of its own')
  const prefix = root.name.includes(':') ? `${root.name.split(':')[0]}:` : ''
  const at = beforeEnd(text, root)
  const sheets = /<(?:[\w-]+:)?style[\s>]/.test(text)
  return { from: at, to: at, text: dotGroup(added, like.shape, space, { prefix, named, sheets }) }
}
