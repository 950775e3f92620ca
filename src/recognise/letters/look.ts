import { boxOfPoints, type Box } from '../../geometry/box.js'
import { featuresOf } from './features.js'
import { contoursOf, type Ink } from './ink.js'
import { HEAD, project, references } from './references.js'

/** What a shape may be, by its look alone: each character with the distance of its most similar reference. */
export interface Look {
  box: Box
  /** Nearest first. One unit is the usual scatter within a character along one axis. */
  likenesses: Likeness[]
}

export interface Likeness {
  label: string
  distance: number
}

/** Boxes thinner than this share of their length are drawn as if they were not. */
const THINNEST = 0.005
/** Characters that look this much less alike than the most similar one are not thought of. */
const ROOM = 14

/** @param ink upright: the baseline runs along x */
export function lookAt(ink: Ink): Look | undefined {
  const box = boxOfPoints(contoursOf(ink).flat())
  if (!box) return undefined
  const least = THINNEST * Math.max(box.width, box.height)
  if (!(Math.min(box.width, box.height) > least)) return undefined
  return { box, likenesses: likenessesOf(project(references(), featuresOf(ink, box))) }
}

function likenessesOf(point: Float64Array): Likeness[] {
  const { heads, tails, labels, labelled, dimensions } = references()
  const first = new Float64Array(labelled.length)
  let start = 0
  for (let i = 0; i < labelled.length; i++) {
    first[i] = squareBetween(point, 0, heads, i, HEAD)
    if (first[i] < first[start]) start = i
  }
  const rest = dimensions - HEAD
  let least = first[start] + squareBetween(point, HEAD, tails, start, rest)
  let limit = (Math.sqrt(least) + ROOM) ** 2
  const nearest = new Float64Array(labels.length).fill(Infinity)
  for (let i = 0; i < labelled.length; i++) {
    const label = labelled[i]
    if (first[i] >= limit || first[i] >= nearest[label]) continue
    const square = first[i] + squareBetween(point, HEAD, tails, i, rest)
    if (square >= nearest[label]) continue
    nearest[label] = square
    if (square >= least) continue
    least = square
    limit = (Math.sqrt(least) + ROOM) ** 2
  }
  return labels
    .map((label, i) => ({ label, distance: Math.sqrt(nearest[i]) }))
    .filter(({ distance }) => distance <= Math.sqrt(limit))
    .sort((a, b) => a.distance - b.distance)
}

/** Squared distance of a part of a point from the same part of one of the references. */
function squareBetween(point: Float64Array, from: number, parts: Float32Array, index: number, size: number): number {
  let sum = 0
  const start = index * size
  for (let d = 0; d < size; d++) {
    const apart = point[from + d] - parts[start + d]
    sum += apart * apart
  }
  return sum
}
