import { attributeOf } from '../../drawing/rewrite.js'
import { subpathsIn } from '../../drawing/subpaths.js'
import type { WrittenDrawing } from '../../drawing/source-text.js'
import type { Shape } from '../../drawing/drawing.js'
import type { Matrix } from '../../geometry/matrix.js'
import type { Owner } from './marks.js'

/** A path that draws several things, of which one can be changed in the path's own data. */
export interface PathOwner {
  owner: Owner
  shape: Shape
  data: string
  /** From the path's own coordinates to millimetres. */
  space: Matrix
}

/** Undefined when the element is no path, or its contours cannot be told from one another in its data. */
export function pathOf(owner: Owner, { text, spaceOf }: WrittenDrawing): PathOwner | undefined {
  const { written, shapes } = owner
  const [shape] = shapes
  if (written.element.name !== 'path' || shapes.length !== 1) return undefined
  const data = attributeOf(text, written, 'd')
  const space = spaceOf(written.element)
  if (data === undefined || !space || subpathsIn(data) !== shape.contours.length) return undefined
  return { owner, shape, data, space }
}

/** Finest step of a coordinate that is written anew, millimetres. */
const FINEST = 1e-5

/** So many decimals that a coordinate is written to the finest step. */
export const decimalsFor = ({ a, b, c, d }: Matrix): number =>
  Math.min(12, Math.max(0, Math.ceil(Math.log10(Math.max(Math.hypot(a, b), Math.hypot(c, d)) / FINEST))))
