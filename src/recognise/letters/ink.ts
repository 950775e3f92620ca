import type { Box } from '../../geometry/box.js'
import { boxOfLoops, type Loop } from '../../geometry/loop.js'
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
export const boxOfInk = (ink: Ink): Box | undefined => boxOfLoops(contoursOf(ink))

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
 * @param ys heights of the lines, rising
 */
export function spansOf({ layers }: Ink, ys: ArrayLike<number>): Spans[] {
  let result: Spans[] | undefined
  for (const layer of layers) {
    const own = spansOfLayer(layer, ys)
    result = result ? result.map((before, i) => combine(before, own[i], layer.effect)) : own
  }
  return result ?? Array.from(ys, () => [])
}

function spansOfLayer({ contours, rule }: Layer, ys: ArrayLike<number>): Spans[] {
  const crossings = Array.from(ys, (): Crossings => ({ places: [], turns: [] }))
  for (const contour of contours) {
    let ax = contour[contour.length - 2]
    let ay = contour[contour.length - 1]
    let line = firstFrom(ys, ay)
    for (let k = 0; k < contour.length; k += 2) {
      const bx = contour[k]
      const by = contour[k + 1]
      // An edge meets the lines from its upper end up to, and without, its lower one: each vertex counts once.
      if (ay < by)
        for (; line < ys.length && ys[line] < by; line++)
          insert(crossings[line], ax + ((ys[line] - ay) * (bx - ax)) / (by - ay), 1)
      else
        for (; line > 0 && ys[line - 1] >= by; line--)
          insert(crossings[line - 1], bx + ((ys[line - 1] - by) * (ax - bx)) / (ay - by), -1)
      ax = bx
      ay = by
    }
  }
  return crossings.map((own) => (rule === 'evenodd' ? own.places : spansBetween(own)))
}

/** Where edges cross a line, rising, and for each the way in which the edge crosses. */
interface Crossings {
  places: number[]
  turns: number[]
}

/** The first of the lines that lies at this height or below it. */
function firstFrom(ys: ArrayLike<number>, y: number): number {
  let line = 0
  while (line < ys.length && ys[line] < y) line++
  return line
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

function spansBetween({ places, turns }: Crossings): Spans {
  // What most lines cross: in at one edge and out at the next.
  if (places.length === 2 && turns[0] + turns[1] === 0) return places
  const spans: Spans = []
  let winding = 0
  for (let i = 0; i < places.length; i++) {
    const before = winding !== 0
    winding += turns[i]
    if (before !== (winding !== 0)) spans.push(places[i])
  }
  return spans
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
