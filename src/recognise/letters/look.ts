import type { Box } from '../../geometry/box.js'
import { featuresOf } from './features.js'
import { boxOfInk, type Ink } from './ink.js'
import { Recall } from './recall.js'
import { project, references, type Class, type Manner } from './references.js'
import { inkOfShape, shapeOf, type Shape } from './shape.js'

/** What a shape may be, by its look alone: each character with the distance of its most similar reference. */
export interface Look {
  box: Box
  /** Nearest first. One unit is the usual scatter within a character along one axis. */
  likenesses: readonly Likeness[]
}

export interface Likeness {
  label: string
  distance: number
  manner: Manner
}

/** Boxes thinner than this share of their length are drawn as if they were not. */
const THINNEST = 0.005
/** Characters that look this much less alike than the most similar one are not thought of, nor are more than so many. */
const ROOM = 14
const MOST_LOOKS = 12
/** Some hundred faces of signs; numbers of 4 bytes. */
const KEPT = { shapes: 5000, numbers: 4_000_000 }

const seen = new Recall(likenessesOf, KEPT)

/** @param ink upright: the baseline runs along x. @param box round it, if there is any ink */
export function lookAt(ink: Ink, box: Box): Look | undefined {
  const least = THINNEST * Math.max(box.width, box.height)
  if (!(Math.min(box.width, box.height) > least)) return undefined
  return { box, likenesses: seen.get(shapeOf(ink, box)) }
}

/** What a shape is like, worked out anew. */
export function likenessesOf(shape: Shape): readonly Likeness[] {
  const ink = inkOfShape(shape)
  const box = boxOfInk(ink)
  return box ? nearestTo(project(references(), featuresOf(ink, box))) : []
}

/** A character with a distance that it is at least away, until it was looked at. */
interface Candidate {
  kind: Class
  bound: number
}

/**
 * The nearest reference of each of the most similar characters. A character is as far away as the middle of its references
 * less their radius: those that are farther than what was found are not looked at (branch and bound).
 */
function nearestTo(point: Float64Array): Likeness[] {
  const { classes, points, dimensions } = references()
  const candidates = classes.map((kind): Candidate => {
    const away = Math.sqrt(squareBetween(point, kind.middle, 0, dimensions, Infinity))
    return { kind, bound: away - kind.radius }
  })
  candidates.sort((a, b) => a.bound - b.bound)
  const found: Likeness[] = []
  for (const { kind, bound } of candidates) {
    const limit = found.length < MOST_LOOKS ? Infinity : found[MOST_LOOKS - 1].distance
    const reach = Math.min(limit, found.length > 0 ? found[0].distance + ROOM : Infinity)
    if (bound >= reach) break
    let least = reach * reach
    let nearer = false
    for (let i = kind.from; i < kind.to; i++) {
      const square = squareBetween(point, points, i * dimensions, dimensions, least)
      if (square >= least) continue
      least = square
      nearer = true
    }
    if (nearer) insert(found, { label: kind.label, distance: Math.sqrt(least), manner: kind.manner })
  }
  const farthest = found.length > 0 ? found[0].distance + ROOM : 0
  return found.filter(({ distance }) => distance <= farthest)
}

function insert(found: Likeness[], one: Likeness): void {
  const at = found.findIndex(({ distance }) => distance > one.distance)
  found.splice(at < 0 ? found.length : at, 0, one)
  if (found.length > MOST_LOOKS) found.pop()
}

/** Axes that are looked at together: the discriminants stand by how much they tell. */
const STRIDE = 8

/** Squared distance of a point from one of the references; anything from `limit` up when it is no less than that. */
function squareBetween(
  point: Float64Array,
  points: Float32Array,
  start: number,
  dimensions: number,
  limit: number,
): number {
  let sum = 0
  for (let from = 0; from < dimensions && sum < limit; from += STRIDE) {
    const to = Math.min(from + STRIDE, dimensions)
    for (let d = from; d < to; d++) {
      const apart = point[d] - points[start + d]
      sum += apart * apart
    }
  }
  return sum
}
