import type { Drawing, Shape } from '../../drawing/drawing.js'
import type { Written, WrittenDrawing } from '../../drawing/source-text.js'
import type { Point } from '../../geometry/point.js'
import { dotsOf, type Dot } from '../../recognise/dots.js'
import type { BrailleBlock, Sign } from '../../sign/sign.js'

/** Which contours of which elements the parts of a sign were drawn as. */

/** Contours by the shape that they belong to. */
export type Contours = Map<Shape, Set<number>>

/** A dot that was read stands nearer to its outline than this, millimetres: both come from the same arithmetic. */
const SAME_DOT = 0.01

/** The round outlines of a drawing, in squares of the plane, to be found again by their middles. */
export class RoundOutlines {
  private readonly squares = new Map<string, Dot[]>()

  constructor({ shapes }: Drawing) {
    for (const dot of dotsOf(shapes).dots) {
      const key = keyOf(Math.round(dot.x), Math.round(dot.y))
      const filed = this.squares.get(key)
      if (filed) filed.push(dot)
      else this.squares.set(key, [dot])
    }
  }

  /** The outlines of a block's dots; undefined when one of them is drawn as something else. */
  ofBlock({ lines }: BrailleBlock): Dot[] | undefined {
    const found = lines.flatMap(({ dots }) => dots.map((dot) => this.at(dot)))
    const known = found.filter((dot) => dot !== undefined)
    return known.length > 0 && known.length === found.length ? known : undefined
  }

  private at({ x, y }: Point): Dot | undefined {
    const columns = [Math.floor(x), Math.ceil(x)]
    const rows = [Math.floor(y), Math.ceil(y)]
    return columns
      .flatMap((column) => rows.flatMap((row) => this.squares.get(keyOf(column, row)) ?? []))
      .find((dot) => Math.hypot(dot.x - x, dot.y - y) <= SAME_DOT)
  }
}

const keyOf = (column: number, row: number): string => `${column} ${row}`

/** All contours of the dots of a sign's braille. */
export function brailleContours({ braille }: Sign, drawing: Drawing): Contours {
  const outlines = new RoundOutlines(drawing)
  return contoursOf(braille.flatMap((block) => outlines.ofBlock(block) ?? []))
}

/** All contours of dots, those included that are drawn over them. */
export function contoursOf(dots: readonly Dot[]): Contours {
  const contours: Contours = new Map()
  for (const dot of dots)
    for (const { shape, contour } of [dot, ...(dot.twins ?? [])]) {
      const own = contours.get(shape)
      if (own) own.add(contour)
      else contours.set(shape, new Set([contour]))
    }
  return contours
}

/** An element, with the contours in question that it draws, and whether it draws anything else. */
export interface Owner {
  written: Written
  shapes: Shape[]
  isWhole: boolean
}

/** The elements that draw some contours; undefined when one of them cannot be found in the text. */
export function ownersOf(contours: Contours, { drawing, at }: WrittenDrawing): Owner[] | undefined {
  const owners = new Map<Written, Owner>()
  for (const shape of contours.keys()) {
    const written = at(shape.source)
    if (!written) return undefined
    const owner = owners.get(written) ?? { written, shapes: [], isWhole: true }
    owner.shapes.push(shape)
    owners.set(written, owner)
  }
  const open = (owner: Owner | undefined) => {
    if (owner) owner.isWhole = false
  }
  for (const shape of drawing.shapes) {
    const written = at(shape.source)
    const owner = written && owners.get(written)
    if (owner && contours.get(shape)?.size !== shape.contours.length) open(owner)
  }
  for (const { source } of [...drawing.texts, ...drawing.ignored]) {
    const written = at(source)
    if (written) open(owners.get(written))
  }
  return [...owners.values()]
}
