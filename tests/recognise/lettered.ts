import { createRequire } from 'node:module'
import * as fontkit from 'fontkit'
import type { Font } from 'fontkit'
import type { Shape } from '../../src/drawing/drawing.js'
import { apply, type Matrix } from '../../src/geometry/matrix.js'
import type { Contour } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { contoursOfGlyph } from '../../src/recognise/typeface.js'
import { shape } from './built.js'

/** Outlined letters for drawings that are built by hand, in faces that no reading was made from. */

const require = createRequire(import.meta.url)
const FILES = {
  lato: '@expo-google-fonts/lato/400Regular/Lato_400Regular.ttf',
  plex: '@expo-google-fonts/ibm-plex-sans/500Medium/IBMPlexSans_500Medium.ttf',
  slab: '@expo-google-fonts/roboto-slab/400Regular/RobotoSlab_400Regular.ttf',
} as const
const fonts = new Map<string, Font>()

function fontOf(name: keyof typeof FILES): Font {
  const known = fonts.get(name)
  if (known) return known
  const font = fontkit.openSync(require.resolve(FILES[name]))
  if (!('glyphForCodePoint' in font)) throw new Error(`${name} is no single font`)
  fonts.set(name, font)
  return font
}

export interface Lettered {
  text: string
  /** Left end of the baseline and height of capitals, millimetres. */
  x: number
  y: number
  height: number
  face?: keyof typeof FILES
  /** Millimetres between the advances. */
  tracking?: number
  /** Applied to the letters as set. */
  matrix?: Matrix
}

export function mapped(contour: Contour, map: (p: Point) => Point): Contour {
  const segments = contour.segments.map((s): Contour['segments'][number] =>
    s.kind === 'line'
      ? { kind: 'line', to: map(s.to) }
      : { kind: 'cubic', c1: map(s.c1), c2: map(s.c2), to: map(s.to) },
  )
  return { ...contour, start: map(contour.start), segments }
}

/** One shape for each letter, as a drawing program writes it. */
export function letters(set: Lettered, more: Partial<Shape> = {}): Shape[] {
  const font = fontOf(set.face ?? 'lato')
  const unit = set.height / font.capHeight
  let pen = set.x
  return Array.from(set.text).flatMap((character) => {
    const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0)
    const at = pen
    pen += glyph.advanceWidth * unit + (set.tracking ?? 2)
    const place = (p: Point): Point => {
      const here = { x: at + p.x * unit, y: set.y + p.y * unit }
      return set.matrix ? apply(set.matrix, here) : here
    }
    const contours = contoursOfGlyph(font, glyph.id).map((c) => mapped(c, place))
    return contours.length > 0 ? [shape(contours, more)] : []
  })
}
