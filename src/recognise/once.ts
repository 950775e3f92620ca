import { distance } from '../geometry/point.js'
import type { Dot } from './dots.js'
import { nearbyOf } from './nearby.js'

/**
 * One dot is often drawn several times: filled and outlined apart, doubled, shaded in rings, a ring as its outer and inner
 * edge. What lies in a larger round thing is the same dot; the largest counts and remembers the others as its twins.
 */

/** Middles nearer than this are the same place: the mesh of the first sieve, millimetres. */
const SAME_PLACE = 0.05
/** How far a twin may stick out of its dot, as a share of the dot's diameter. */
const STICKING_OUT = 0.03
/** Where more round things than this stand in one square of the mesh below, it is a texture and not braille. */
const MOST_IN_SQUARE = 12
/** Millimetres. */
const SQUARE = 2

export function onceEach(candidates: Dot[]): Dot[] {
  const places = gather(candidates, SAME_PLACE, (group) => [largestOf(group)])
  const sparse = gather(places, SQUARE, (group) => (group.length > MOST_IN_SQUARE ? [] : group))
  return absorbed(sparse)
}

/** Passes the dots of each square of a mesh through `choose`; keeps the order of the first dot of each square. */
function gather(dots: Dot[], mesh: number, choose: (group: Dot[]) => Dot[]): Dot[] {
  const squares = new Map<string, Dot[]>()
  for (const dot of dots) {
    const key = `${Math.round(dot.x / mesh)} ${Math.round(dot.y / mesh)}`
    const group = squares.get(key)
    if (group) group.push(dot)
    else squares.set(key, [dot])
  }
  return [...squares.values()].flatMap(choose)
}

function largestOf(group: Dot[]): Dot {
  if (group.length === 1) return group[0]
  const largest = group.reduce((most, dot) => (dot.diameter > most.diameter ? dot : most))
  return { ...largest, twins: group.filter((dot) => dot !== largest).flatMap(withTwins) }
}

const withTwins = (dot: Dot) => [{ shape: dot.shape, contour: dot.contour }, ...(dot.twins ?? [])]

function absorbed(dots: Dot[]): Dot[] {
  if (dots.length < 2) return dots
  const nearby = nearbyOf(dots)
  const twins = new Map<number, number[]>()
  const gone = new Set<number>()
  const byDiameter = dots.map((_, i) => i).sort((a, b) => dots[b].diameter - dots[a].diameter || a - b)
  for (const i of byDiameter) {
    if (gone.has(i)) continue
    const dot = dots[i]
    for (const j of nearby(dot.x, dot.y, dot.diameter / 2)) {
      if (j === i || gone.has(j)) continue
      const other = dots[j]
      const reach = distance(other, dot) + other.diameter / 2
      if (other.diameter > dot.diameter || reach > dot.diameter * (0.5 + STICKING_OUT)) continue
      gone.add(j)
      twins.set(i, [...(twins.get(i) ?? []), j])
    }
  }
  if (gone.size === 0) return dots
  return dots.flatMap((dot, i) => {
    if (gone.has(i)) return []
    const own = twins.get(i)
    return own ? [{ ...dot, twins: [...(dot.twins ?? []), ...own.flatMap((j) => withTwins(dots[j]))] }] : [dot]
  })
}
