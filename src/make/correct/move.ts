import { attributeOf, attributeSet, type Edit } from '../../drawing/rewrite.js'
import type { Shape } from '../../drawing/drawing.js'
import type { WrittenDrawing } from '../../drawing/source-text.js'
import { withSubpaths } from '../../drawing/subpaths.js'
import { boxContains, type Box } from '../../geometry/box.js'
import { boxOfContour } from '../../geometry/curve.js'
import { apply, inverse, type Matrix } from '../../geometry/matrix.js'
import type { Point } from '../../geometry/point.js'
import { ownersOf, type Contours, type Owner } from './marks.js'
import { NO_CHANGE, NotCorrectable, type Rewrite } from './outcome.js'
import { decimalsFor, pathOf } from './path-owner.js'

/** Characters moved in the text of a drawing: their elements are shifted, or their subpaths where an element draws more. */

/** How each contour is to move, in millimetres. */
export type Moves = Map<Shape, Map<number, Point>>

const SHARED = 'The characters are drawn by elements that draw other things too, and cannot be parted from them.'
const NOT_FOUND = 'The characters are not drawn as outlines whose elements were found in the text of the drawing.'
/** How far an outline may reach out of the box of its line by rounding, millimetres. */
const SLACK = 0.05

/** The contours that lie within a box, other than those of dots. */
export function contoursWithin({ drawing }: WrittenDrawing, box: Box, dots: Contours): Contours {
  const found: Contours = new Map()
  for (const shape of drawing.shapes)
    shape.contours.forEach((contour, i) => {
      if (dots.get(shape)?.has(i) || !boxContains(box, boxOfContour(contour), SLACK)) return
      const own = found.get(shape)
      if (own) own.add(i)
      else found.set(shape, new Set([i]))
    })
  return found
}

export function addMoves(moves: Moves, contours: Contours, by: Point): void {
  for (const [shape, own] of contours) {
    const known = moves.get(shape) ?? new Map<number, Point>()
    for (const contour of own) known.set(contour, by)
    moves.set(shape, known)
  }
}

export function moved(written: WrittenDrawing, moves: Moves): Rewrite | NotCorrectable {
  const contours: Contours = new Map([...moves].map(([shape, own]) => [shape, new Set(own.keys())]))
  const owners = ownersOf(contours, written)
  if (!owners || owners.length === 0) return new NotCorrectable(NOT_FOUND)
  const edits: Edit[] = []
  for (const owner of owners) {
    const ways = owner.shapes.flatMap((shape) => [...(moves.get(shape)?.values() ?? [])])
    const together = owner.isWhole && ways.every(({ x, y }) => x === ways[0].x && y === ways[0].y)
    const edit = together ? shiftedElement(written, owner, ways[0]) : shiftedSubpaths(written, owner, moves)
    if (!edit) return new NotCorrectable(SHARED)
    edits.push(edit)
  }
  return { ...NO_CHANGE, edits, moved: moves }
}

/** A way in millimetres as one in a user space. */
function wayIn(space: Matrix, by: Point): Point {
  return apply(inverse({ ...space, e: 0, f: 0 }), by)
}

function shiftedElement({ text, spaceOf }: WrittenDrawing, { written }: Owner, by: Point): Edit | undefined {
  const space = written.element.parent && spaceOf(written.element.parent)
  if (!space) return undefined
  const { x, y } = wayIn(space, by)
  const say = (value: number) => String(Number(value.toFixed(decimalsFor(space))) + 0)
  const before = attributeOf(text, written, 'transform')?.trim() ?? ''
  return attributeSet(text, written, 'transform', `translate(${say(x)},${say(y)}) ${before}`.trim())
}

function shiftedSubpaths(written: WrittenDrawing, owner: Owner, moves: Moves): Edit | undefined {
  const path = pathOf(owner, written)
  const own = path && moves.get(path.shape)
  if (!own) return undefined
  const change = (index: number) => {
    const by = own.get(index)
    return by && wayIn(path.space, by)
  }
  const data = withSubpaths(path.data, change, decimalsFor(path.space))
  return data === undefined ? undefined : attributeSet(written.text, owner.written, 'd', data)
}
