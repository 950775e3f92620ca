import { boxOfContours, cornersOf } from '../../geometry/curve.js'
import { edgesOf, type Edges } from '../../geometry/gap.js'
import type { Contour } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import type { Box } from '../../geometry/box.js'
import type { OutlineFace } from '../../recognise/faces.js'
import { resolveFace } from '../../recognise/fonts.js'
import { SHIPPED_FAMILIES } from '../../recognise/shipped.js'
import { capitalMeasures, contoursOfGlyph, type CapitalMeasures } from '../../recognise/typeface.js'
import { Refusal } from '../../refusal.js'
import { isWithin, type Ends } from '../../windows/ends.js'
import { middleOf } from './aim.js'
import type { Wanted } from './wanted.js'

/** The face that a sign is set in, and its glyphs at true size. */

export interface Face {
  outline: OutlineFace
  /** In font units. */
  capitals: CapitalMeasures
}

export const DEFAULT_FAMILY = 'Open Sans'

/** CSS weights: those that common families have. */
const WEIGHTS = [300, 400, 500, 600, 700, 800]
/** Strokes of raised characters that serve touch and sight lie about here, as a share of the height (common practice, no source). */
const USUAL_STROKE = 0.125
const INSIDE = 0.02

/** The upright faces of a family that ships. */
export function facesOf(family: string): Face[] {
  const faces = WEIGHTS.map((weight) => resolveFace([family], weight, 'normal'))
  const distinct = new Map<string, Face>()
  for (const outline of faces) {
    if (outline.kind !== 'outlines' || !SHIPPED_FAMILIES.includes(outline.family)) continue
    const capitals = capitalMeasures(outline.font)
    if (capitals) distinct.set(outline.name, { outline, capitals })
  }
  return [...distinct.values()]
}

/**
 * The face of the family whose strokes and proportions lie in the windows, and whose strokes are nearest to the middle of theirs.
 * @param height of the capital I, millimetres
 * @returns undefined when no face of the family satisfies the windows
 * @throws {Refusal} `invalid-description` for a family that does not ship
 */
export function chooseFace(family: string, height: number, wanted: Wanted): Face | undefined {
  const faces = facesOf(family)
  if (faces.length === 0) {
    const detail = `The typeface “${family}” does not ship with this service; these do: ${SHIPPED_FAMILIES.join(', ')}.`
    throw new Refusal('invalid-description', detail, [{ detail, pointer: '/sign/lettering/0/typeface/family' }])
  }
  const prefix = wanted.part === 'visual' ? 'visual' : 'raised'
  const share = strokeWindow(wanted.ends(`${prefix}.strokeThickness`))
  const aim = middleOf(share, INSIDE, USUAL_STROKE)
  const kinds = wanted.kinds(`${prefix}.style`)
  const fitting = faces.filter(
    ({ outline, capitals }) =>
      (kinds === undefined || kinds.includes(outline.style)) &&
      isWithin(capitals.stem / capitals.height, share) &&
      isWithin((capitals.stem / capitals.height) * height, wanted.ends('raised.strokeWidth')) &&
      isWithin(capitals.proportion, wanted.ends(`${prefix}.proportion`)),
  )
  const off = ({ capitals }: Face) => Math.abs(capitals.stem / capitals.height - aim)
  return fitting.sort((a, b) => off(a) - off(b))[0]
}

/** Characters that serve for sight as well need strokes of a tenth of their height (2010 ADA Standards 703.5.7): thinner ones are never chosen where thicker ones will do. */
const LEAST_STROKE = 0.1
const strokeWindow = ({ min = LEAST_STROKE, max }: Ends): Ends => ({ min, ...(max !== undefined && { max }) })

/** A character at true size with the start of its baseline at the origin, y down, in millimetres. */
export interface Glyph {
  character: string
  contours: Contour[]
  edges: Edges
  box: Box
  advance: number
}

/** Millimetres: far below what is judged. */
const TOLERANCE = 0.0005

/**
 * The characters of a face at one height of its capitals.
 * @throws {Refusal} `invalid-description` for a character that the face does not have.
 */
export function glyphsOf(face: Face, height: number): (character: string) => Glyph {
  const known = new Map<string, Glyph>()
  const scale = height / face.capitals.height
  return (character) => {
    let glyph = known.get(character)
    if (!glyph) known.set(character, (glyph = makeGlyph(character, face, scale)))
    return glyph
  }
}

function makeGlyph(character: string, { outline: { font, name } }: Face, scale: number): Glyph {
  const code = character.codePointAt(0) ?? 0
  const { id, advanceWidth } = font.glyphForCodePoint(code)
  const contours = contoursOfGlyph(font, id).map((contour) =>
    mapContour(contour, ({ x, y }) => ({ x: x * scale, y: y * scale })),
  )
  const box = boxOfContours(contours)
  if (!font.hasGlyphForCodePoint(code) || !box) {
    const detail = `The typeface ${name} has no “${character}”.`
    throw new Refusal('invalid-description', detail, [{ detail, pointer: '/sign/lettering/0' }])
  }
  const edges = edgesOf(contours.map((contour) => cornersOf(contour, TOLERANCE)))
  return { character, contours, edges, box, advance: advanceWidth * scale }
}

export const mapContour = (contour: Contour, map: (point: Point) => Point): Contour => ({
  start: map(contour.start),
  closed: contour.closed,
  segments: contour.segments.map((s) =>
    s.kind === 'line'
      ? { kind: 'line', to: map(s.to) }
      : { kind: 'cubic', c1: map(s.c1), c2: map(s.c2), to: map(s.to) },
  ),
})
