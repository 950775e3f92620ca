import { distance, type Point } from '../geometry/point.js'
import { medianOf } from '../geometry/fit.js'
import type { Dot } from './dots.js'
import { nearbyOf } from './nearby.js'

/**
 * The two directions and spacings of neighbouring dots. In braille the step from a dot to the next in its cell is the most
 * frequent short difference of two positions; the differences are heaped in the plane, and each pair of heaps of like length
 * at about right angles is a basis to try. Cells without neighbouring dots show only diagonals or the step over a missing
 * middle dot: from these the same basis follows by a turn or by halving, to be tried last.
 */
export interface Basis {
  /** One step between neighbouring dots, millimetres, in one direction and at about a right angle to it. */
  first: Point
  second: Point
  /** Seen directly as neighbouring dots, or inferred from diagonals and double steps. */
  direct: boolean
}

/** Longest difference that is looked at, in diameters. */
const REACH = 3.2
/** Plausible dot spacing in diameters: dots do not touch, and are not lost in the plane. */
const SPACING_OF_DIAMETER = [1.12, 3] as const
/** Radius of a heap of differences, in diameters. */
const HEAP = 0.13
const MOST_HEAPS = 8
/** Dots whose neighbours are looked at; more do not make the heaps clearer. */
const MOST_SAMPLED = 500
/** Squashed and sheared drawings: greatest ratio of the two steps, greatest |cosine| of the angle between them. */
const MOST_UNEQUAL = 1.22
const MOST_OBLIQUE = 0.18

/** Distances along a row over which its direction is straightened, in dot spacings, and how far off the row a dot may be. */
const ROW_LENGTHS = [
  [2, 9],
  [9, 40],
  [40, 400],
] as const
const ONE_ROW = 0.3
/** Dots whose pairs are looked at to straighten a row. */
const MOST_STRAIGHTENED = 150

interface Heap {
  middle: Point
  count: number
}

export function basesOf(dots: readonly Dot[]): Basis[] {
  const diameter = medianOf(dots.map((d) => d.diameter))
  const heaps = heapsOf(differences(dots, REACH * diameter), HEAP * diameter)
  const bases: Basis[] = []
  const add = (first: Point, second: Point, direct: boolean) => {
    const [least, most] = SPACING_OF_DIAMETER.map((s) => s * diameter)
    const sizes = [Math.hypot(first.x, first.y), Math.hypot(second.x, second.y)]
    if (sizes.some((size) => size < least || size > most)) return
    const basis = { first, second, direct }
    if (!bases.some((known) => sameBasis(known, basis, HEAP * diameter))) bases.push(basis)
  }
  for (const heap of heaps) {
    const partner = heaps.find((other) => squareTo(heap.middle, other.middle))
    add(heap.middle, partner?.middle ?? quarterTurn(heap.middle), true)
  }
  for (const { middle } of heaps) {
    const partner = heaps.find((other) => squareTo(middle, other.middle))?.middle ?? quarterTurn(middle)
    add(
      { x: (middle.x + partner.x) / 2, y: (middle.y + partner.y) / 2 },
      { x: (partner.x - middle.x) / 2, y: (partner.y - middle.y) / 2 },
      false,
    )
    const half = { x: middle.x / 2, y: middle.y / 2 }
    add(half, quarterTurn(half), false)
  }
  return bases
}

/**
 * `along` turned so that dots of one row, near ones first and then ones far apart, lie at equal height: the direction taken
 * from neighbours alone would drift off the row over a long line. The step keeps its length.
 */
export function straightened(dots: readonly Dot[], along: Point, across: Point): Point {
  const stride = Math.max(1, Math.floor(dots.length / MOST_STRAIGHTENED))
  const sample = dots.filter((_, i) => i % stride === 0)
  let direction = along
  for (const [near, far] of ROW_LENGTHS) {
    const determinant = direction.x * across.y - direction.y * across.x
    const slopes: number[] = []
    const places = sample
      .map(({ x, y }) => ({
        a: (x * across.y - y * across.x) / determinant,
        b: (direction.x * y - direction.y * x) / determinant,
      }))
      .sort((p, q) => p.b - q.b)
    for (let i = 0; i < places.length; i++)
      for (let j = i + 1; j < places.length && places[j].b - places[i].b < ONE_ROW; j++) {
        const a = places[j].a - places[i].a
        if (Math.abs(a) > near && Math.abs(a) <= far) slopes.push((places[j].b - places[i].b) / a)
      }
    if (slopes.length === 0) continue
    const slope = medianOf(slopes)
    direction = { x: direction.x + slope * across.x, y: direction.y + slope * across.y }
  }
  return direction
}

const quarterTurn = (p: Point): Point => ({ x: -p.y, y: p.x })

function squareTo(a: Point, b: Point): boolean {
  const [m, n] = [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)]
  return m <= MOST_UNEQUAL * n && n <= MOST_UNEQUAL * m && Math.abs(a.x * b.x + a.y * b.y) <= MOST_OBLIQUE * m * n
}

function sameBasis(a: Basis, b: Basis, slack: number): boolean {
  const near = (p: Point, q: Point) => Math.min(distance(p, q), distance(p, { x: -q.x, y: -q.y })) < slack
  return (near(a.first, b.first) && near(a.second, b.second)) || (near(a.first, b.second) && near(a.second, b.first))
}

/** Differences of near positions, each turned into the half plane so that a pair counts once. */
function differences(dots: readonly Dot[], reach: number): Point[] {
  const nearby = nearbyOf(dots)
  const stride = Math.max(1, Math.floor(dots.length / MOST_SAMPLED))
  const result: Point[] = []
  for (let i = 0; i < dots.length; i += stride) {
    for (const j of nearby(dots[i].x, dots[i].y, reach)) {
      const x = dots[j].x - dots[i].x
      const y = dots[j].y - dots[i].y
      if (y > 0 || (y === 0 && x > 0)) result.push({ x, y })
      else if (stride > 1 && j !== i) result.push({ x: -x, y: -y })
    }
  }
  return result
}

/** The fullest heaps of points, fullest first; a point is in one heap. A difference and its opposite are the same. */
function heapsOf(points: Point[], radius: number): Heap[] {
  const squares = new Map<string, Point[]>()
  const key = (p: Point) => `${Math.round(p.x / radius)} ${Math.round(p.y / radius)}`
  for (const p of points) {
    const filed = squares.get(key(p))
    if (filed) filed.push(p)
    else squares.set(key(p), [p])
  }
  const heaps: Heap[] = []
  const used = new Set<string>()
  for (const [start] of [...squares].sort((a, b) => b[1].length - a[1].length)) {
    if (used.has(start) || heaps.length >= MOST_HEAPS * 2) continue
    const [cx, cy] = start.split(' ').map(Number)
    const members: Point[] = []
    for (let dx = -1; dx <= 1; dx++)
      for (let dy = -1; dy <= 1; dy++)
        for (const sign of [1, -1]) {
          const near = `${sign * (cx + dx)} ${sign * (cy + dy)}`
          if (used.has(near)) continue
          const filed = squares.get(near)
          if (!filed) continue
          used.add(near)
          members.push(...filed.map((p) => ({ x: sign * p.x, y: sign * p.y })))
        }
    heaps.push({
      middle: { x: medianOf(members.map((p) => p.x)), y: medianOf(members.map((p) => p.y)) },
      count: members.length,
    })
  }
  return heaps.sort((a, b) => b.count - a.count).slice(0, MOST_HEAPS)
}
