import type { Point } from '../../../src/geometry/point.js'

/** Dots as drawing programs and people write them. */

export interface Construction {
  name: string
  /** SVG for the dots at the given places, all of one diameter; `n` writes a number of the drawing's units. */
  write: (centres: readonly Point[], diameter: number, n: (value: number) => string) => string
  /**
   * Diameter of the least circle round the outline, and its least width, both over the diameter of the circle that is
   * meant.
   */
  widest: number
  narrowest: number
}

const each =
  (one: (c: Point, r: number, n: (value: number) => string) => string): Construction['write'] =>
  (centres, diameter, n) =>
    centres.map((c) => one(c, diameter / 2, n)).join('')

const exact = (name: string, write: Construction['write']): Construction => ({ name, write, widest: 1, narrowest: 1 })

/** Distance of the controls that puts the middle of a quarter circle on the circle: 4 (√2 - 1) / 3 of the radius. */
const QUARTER = (4 * (Math.SQRT2 - 1)) / 3
/** The same for a half circle. */
const HALF = 4 / 3

type Cubic = readonly [Point, Point, Point, Point]
const quarter: Cubic = [
  { x: 1, y: 0 },
  { x: 1, y: QUARTER },
  { x: QUARTER, y: 1 },
  { x: 0, y: 1 },
]
const half: Cubic = [
  { x: 1, y: 0 },
  { x: 1, y: HALF },
  { x: -1, y: HALF },
  { x: -1, y: 0 },
]

const SAMPLES = 10_000

/** Greatest distance from the middle of a curve that stands for part of the unit circle. */
function greatestRadius([a, b, c, d]: Cubic): number {
  let most = 0
  for (let i = 0; i <= SAMPLES; i++) {
    const t = i / SAMPLES
    const u = 1 - t
    const on = (p: number, q: number, r: number, s: number) =>
      u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s
    most = Math.max(most, Math.hypot(on(a.x, b.x, c.x, d.x), on(a.y, b.y, c.y, d.y)))
  }
  return most
}

const turned = (p: Point, quarters: number): Point => (quarters === 0 ? p : turned({ x: -p.y, y: p.x }, quarters - 1))

function cubics(name: string, curve: Cubic, turns: readonly number[]): Construction {
  const write = each((c, r, n) => {
    const at = (p: Point) => `${n(c.x + r * p.x)},${n(c.y + r * p.y)}`
    const curves = turns.map((q) => `C${curve.slice(1).map((p) => at(turned(p, q))).join(' ')}`) // prettier-ignore
    return `<path d="M${at(curve[0])}${curves.join('')}Z"/>`
  })
  return { name, write, widest: greatestRadius(curve), narrowest: 1 }
}

/** Where the first corner stands, in radians: nowhere in particular. */
const FIRST_CORNER = 0.3

const polygon = (corners: number): Construction => ({
  name: `polygon of ${corners} corners on the circle`,
  write: each((c, r, n) => {
    const points = Array.from({ length: corners }, (_, i) => {
      const angle = FIRST_CORNER + (2 * Math.PI * i) / corners
      return `${n(c.x + r * Math.cos(angle))},${n(c.y + r * Math.sin(angle))}`
    })
    return `<polygon points="${points.join(' ')}"/>`
  }),
  widest: 1,
  narrowest: Math.cos(Math.PI / corners),
})

export const CONSTRUCTIONS: readonly Construction[] = [
  exact(
    '`circle`',
    each((c, r, n) => `<circle cx="${n(c.x)}" cy="${n(c.y)}" r="${n(r)}"/>`),
  ),
  exact(
    'two arcs',
    each((c, r, n) => {
      const arc = (sign: string) => `a${n(r)},${n(r)} 0 1 0 ${sign}${n(2 * r)},0`
      return `<path d="M${n(c.x - r)},${n(c.y)}${arc('')}${arc('-')}Z"/>`
    }),
  ),
  cubics('four cubic curves', quarter, [0, 1, 2, 3]),
  cubics('two cubic curves', half, [0, 2]),
  exact('`use` of one circle', (centres, diameter, n) => {
    const uses = centres.map((c) => `<use href="#dot" x="${n(c.x)}" y="${n(c.y)}"/>`)
    return `<defs><circle id="dot" r="${n(diameter / 2)}"/></defs>${uses.join('')}`
  }),
  exact('round caps of strokes of no length', (centres, diameter, n) => {
    const points = centres.map((c) => `M${n(c.x)},${n(c.y)}h0`)
    return `<path d="${points.join('')}" fill="none" stroke="#1d2b3a" stroke-width="${n(diameter)}" stroke-linecap="round"/>`
  }),
  ...[12, 16, 24, 64].map(polygon),
]
