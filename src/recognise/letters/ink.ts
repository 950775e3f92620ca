import type { Box } from '../../geometry/box.js'
import type { Loop } from '../../geometry/gap.js'
import type { Matrix } from '../../geometry/matrix.js'

/**
 * What is painted of one character or part of one, as layers in paint order. A drawing program may write a letter as one
 * path, as several that touch, or with each counter as a shape of its own; the layers hold all of these.
 */
export interface Ink {
  layers: Layer[]
}

export interface Layer {
  /** Closed contours. */
  contours: Loop[]
  rule: 'nonzero' | 'evenodd'
  /** `add`: painted; `cut`: painted over in the colour of the ground; `flip`: only edges are drawn, inside and outside change. */
  effect: 'add' | 'cut' | 'flip'
}

/** Where a straight line that runs across is inked: from, to, from, to, … rising. */
export type Spans = number[]

/** All contours of the ink. */
export const contoursOf = ({ layers }: Ink): Loop[] => layers.flatMap((l) => l.contours)

/** The smallest box round all corners; undefined for none. */
export function boxOfInk({ layers }: Ink): Box | undefined {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { contours } of layers)
    for (const contour of contours)
      for (let i = 0; i < contour.length; i += 2) {
        const x = contour[i]
        const y = contour[i + 1]
        if (x < left) left = x
        if (x > right) right = x
        if (y < top) top = y
        if (y > bottom) bottom = y
      }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : undefined
}

/** The ink as seen in other coordinates. */
export function mapInk(ink: Ink, { a, b, c, d, e, f }: Matrix): Ink {
  if (a === 1 && b === 0 && c === 0 && d === 1 && e === 0 && f === 0) return ink
  const map = (contour: Loop): Loop => {
    const mapped = new Float64Array(contour.length)
    for (let i = 0; i < contour.length; i += 2) {
      mapped[i] = a * contour[i] + c * contour[i + 1] + e
      mapped[i + 1] = b * contour[i] + d * contour[i + 1] + f
    }
    return mapped
  }
  return { layers: ink.layers.map((layer) => ({ ...layer, contours: layer.contours.map(map) })) }
}

/**
 * The spans of ink on horizontal lines, by crossings in rising order and the fill rule of SVG 1.1, 11.3.
 * @param ys heights of the lines, rising and evenly spaced
 */
export function spansOf({ layers }: Ink, ys: readonly number[]): Spans[] {
  let result: Spans[] | undefined
  for (const layer of layers) {
    const own = spansOfLayer(layer, ys)
    result = result ? result.map((before, i) => combine(before, own[i], layer.effect)) : own
  }
  return result ?? ys.map(() => [])
}

/** Where the edges cross a line: places in rising order, each with the way in which the edge crosses. */
interface Crossings {
  places: number[]
  turns: number[]
}

function spansOfLayer({ contours, rule }: Layer, ys: readonly number[]): Spans[] {
  const crossings = ys.map((): Crossings => ({ places: [], turns: [] }))
  const first = ys[0]
  const step = ys.length > 1 ? ys[1] - ys[0] : 1
  for (const contour of contours) {
    let ax = contour[contour.length - 2]
    let ay = contour[contour.length - 1]
    for (let k = 0; k < contour.length; k += 2) {
      const bx = contour[k]
      const by = contour[k + 1]
      const downwards = ay < by
      const [lowX, lowY, highX, highY] = downwards ? [ax, ay, bx, by] : [bx, by, ax, ay]
      // An edge meets the lines from its upper end up to, and without, its lower one: each vertex counts once.
      for (let i = Math.max(0, Math.ceil((lowY - first) / step)); i < ys.length && ys[i] < highY; i++)
        if (ys[i] >= lowY)
          insert(crossings[i], lowX + ((ys[i] - lowY) * (highX - lowX)) / (highY - lowY), downwards ? 1 : -1)
      ax = bx
      ay = by
    }
  }
  return crossings.map(({ places, turns }) => {
    const spans: Spans = []
    let winding = 0
    for (let i = 0; i < places.length; i++) {
      const before = rule === 'nonzero' ? winding !== 0 : i % 2 === 1
      winding += turns[i]
      const after = rule === 'nonzero' ? winding !== 0 : i % 2 === 0
      if (before !== after) spans.push(places[i])
    }
    return spans
  })
}

function insert({ places, turns }: Crossings, place: number, turn: number): void {
  let at = places.length
  for (; at > 0 && places[at - 1] > place; at--) {
    places[at] = places[at - 1]
    turns[at] = turns[at - 1]
  }
  places[at] = place
  turns[at] = turn
}

function combine(a: Spans, b: Spans, effect: Layer['effect']): Spans {
  const result: Spans = []
  let [i, j] = [0, 0]
  let inked = false
  while (i < a.length || j < b.length) {
    const x = Math.min(a[i] ?? Infinity, b[j] ?? Infinity)
    while (i < a.length && a[i] === x) i++
    while (j < b.length && b[j] === x) j++
    const [inA, inB] = [i % 2 === 1, j % 2 === 1]
    const now = effect === 'add' ? inA || inB : effect === 'cut' ? inA && !inB : inA !== inB
    if (now !== inked) result.push(x)
    inked = now
  }
  return result
}
