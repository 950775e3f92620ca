import type { Paint, Shape } from '../drawing/drawing.js'
import type { Box } from '../geometry/box.js'
import { flatten } from '../geometry/curve.js'
import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { contains } from '../geometry/polyline.js'
import type { Colour, Fact, Unknown } from '../sign/sign.js'
import { colourOf, over, relativeLuminance, type Rgb } from './rgb.js'
import { meetInLightness, throughVeils, tonesOf, type Tone } from './shades.js'

/** The colour of characters and of what is behind them. */

/** Added to both luminances in a WCAG contrast ratio: the flare of a screen. */
const FLARE = 0.05

/** Two colours whose components differ by less are painted alike on an 8-bit screen. */
const SAME_COLOUR = 1 / 512
const OPAQUE = 1 - 1e-6
/** Points of each outline that are held against what is painted behind. */
const SAMPLES_PER_OUTLINE = 8
const MOST_OUTLINES = 64
const SAMPLING_TOLERANCE = 0.01

/** Something that is drawn as one with its place in paint order: how many shapes were painted before it. */
export interface Painted {
  outlines: Polyline[]
  order: number
  fill?: Paint
  /** Why its colour cannot be told from the fill, if so: holes in a plate, outlines without a fill. */
  colourless?: string
}

/** A shape that may be behind characters. */
export interface Surface {
  shape: Shape
  order: number
}

export interface Pair {
  colour: Fact<Colour>
  background: Fact<Colour>
}

const unreadable = (why: string): Unknown => ({ unknown: 'unreadable', why })

const flattened = new WeakMap<Shape, Polyline[]>()

const polylinesOf = (shape: Shape): Polyline[] => {
  let lines = flattened.get(shape)
  if (!lines) {
    lines = shape.contours.map((c) => flatten(c, SAMPLING_TOLERANCE))
    flattened.set(shape, lines)
  }
  return lines
}

const inBox = (p: Point, b: Box) => p.x >= b.x && p.x <= b.x + b.width && p.y >= b.y && p.y <= b.y + b.height

const covers = ({ shape }: Surface, p: Point): boolean =>
  shape.fill !== undefined && inBox(p, shape.box) && contains(polylinesOf(shape), p, shape.fillRule)

/** What is seen at a point through everything that was painted there before `order`: of a gradient, all its stops. */
function behind(surfaces: readonly Surface[], p: Point, order: number): Rgb[] | Unknown {
  const veils: Tone[][] = []
  for (let i = surfaces.length - 1; i >= 0; i--) {
    const surface = surfaces[i]
    if (surface.order >= order || !covers(surface, p)) continue
    const paint = surface.shape.fill as Paint
    if (paint.opacity <= 0) continue
    const tones = tonesOf(paint)
    if (!tones) return unreadable(`the paint “${paint.written}” behind the characters is not understood`)
    if (tones.every(({ opacity }) => opacity >= OPAQUE)) return throughVeils(veils, tones)
    veils.push(tones)
  }
  return veils.length > 0
    ? unreadable('what is painted behind the characters lets an unknown ground shine through')
    : { unknown: 'missing-fact', why: 'nothing is painted behind the characters' }
}

function samplesOf(outlines: readonly Polyline[]): Point[] {
  const step = Math.max(1, Math.ceil(outlines.length / MOST_OUTLINES))
  const samples: Point[] = []
  for (let n = 0; n < outlines.length; n += step) {
    const outline = outlines[n]
    const stride = Math.max(1, Math.floor(outline.length / SAMPLES_PER_OUTLINE))
    for (let i = 0; i < outline.length; i += stride) samples.push(outline[i])
  }
  return samples
}

/** WCAG 2.2 contrast ratio of two relative luminances, 1 to 21. */
export const contrastRatio = (a: number, b: number): number => (Math.max(a, b) + FLARE) / (Math.min(a, b) + FLARE)

const SHADES =
  'a gradient of the characters, or behind them, runs through shades as light as the other, and where is not worked out'

interface Seen {
  front: Rgb
  back: Rgb
}

/** The colour of one painted thing against everything behind it, or why it is not known. */
function seenOf(thing: Painted, surfaces: readonly Surface[]): Seen[] | { colour?: Unknown; background?: Unknown } {
  const samples = samplesOf(thing.outlines)
  if (thing.colourless) return { colour: unreadable(thing.colourless), background: unreadable(thing.colourless) }
  const above = surfaces.filter((s) => s.order > thing.order && (s.shape.fill?.opacity ?? 0) > 0)
  const backs: Rgb[] = []
  let shaded = (thing.fill?.stops?.length ?? 0) > 1
  for (const p of samples) {
    if (above.some((s) => covers(s, p))) return { colour: unreadable('something is painted over the characters') }
    const back = behind(surfaces, p, thing.order)
    if (!Array.isArray(back)) return { background: back }
    for (const one of back) if (!backs.some((b) => sameRgb(b, one))) backs.push(one)
    shaded ||= back.length > 1
  }
  const fill = thing.fill
  if (!fill) return { colour: unreadable('the characters have no fill') }
  const tones = tonesOf(fill)
  if (!tones) return { colour: unreadable(`the paint “${fill.written}” of the characters is not understood`) }
  const pairs = tones.flatMap(({ rgb, opacity }) => backs.map((back) => ({ front: over(rgb, opacity, back), back })))
  const meet = shaded && meetInLightness(pairs.map(({ front }) => front), backs) // prettier-ignore
  return meet ? { colour: unreadable(SHADES), background: unreadable(SHADES) } : pairs
}

const sameRgb = (a: Rgb, b: Rgb) => a.every((v, i) => Math.abs(v - b[i]) < SAME_COLOUR)

const contrastOf = ({ front, back }: Seen) => contrastRatio(relativeLuminance(front), relativeLuminance(back))

/**
 * The colour of a set of characters (or of a pictogram) and of what is behind them in paint order at their places.
 * Where there are several pairs, the one with the least contrast stands for all, and the method says so.
 */
export function coloursOf(things: readonly Painted[], surfaces: readonly Surface[], clouds: readonly Cloud[]): Pair {
  const cloud = clouds.find((c) => things.some((t) => touches(t, c)))
  if (cloud) return { colour: unreadable(cloud.why), background: unreadable(cloud.why) }
  const seen: Seen[] = []
  for (const thing of things) {
    const one = seenOf(thing, surfaces)
    if (Array.isArray(one)) {
      for (const pair of one)
        if (!seen.some((s) => sameRgb(s.front, pair.front) && sameRgb(s.back, pair.back))) seen.push(pair)
      continue
    }
    return {
      colour: one.colour ?? loneColour(things),
      background: one.background ?? unreadable('the colours of the characters are not known'),
    }
  }
  if (seen.length === 0)
    return { colour: unreadable('no outline was found'), background: unreadable('no outline was found') }
  const worst = seen.reduce((a, b) => (contrastOf(b) < contrastOf(a) ? b : a))
  const method =
    seen.length === 1
      ? 'fill of the characters, and what is painted behind their outlines'
      : `the least contrast of ${seen.length} pairs of colours that occur`
  return {
    colour: { value: colourOf(worst.front), basis: 'drawn', method, count: seen.length },
    background: { value: colourOf(worst.back), basis: 'drawn', method, count: seen.length },
  }
}

/** The fill alone, when it does not need a ground to be known and is the same throughout. */
function loneColour(things: readonly Painted[]): Fact<Colour> {
  const fills = things.map((t) => t.fill)
  const rgb = fills[0]?.rgb
  const plain = rgb && fills.every((f) => f?.rgb && f.opacity >= OPAQUE && sameRgb(f.rgb, rgb))
  return plain
    ? { value: colourOf(rgb), basis: 'drawn', method: 'fill of the characters' }
    : unreadable('the characters have several fills, or fills that need a ground')
}

/** A place where something was painted that is not understood. Without a box it may be anywhere. */
export interface Cloud {
  box?: Box
  why: string
}

const touches = (thing: Painted, { box }: Cloud): boolean =>
  box === undefined || thing.outlines.some((outline) => outline.some((p) => inBox(p, box)))
