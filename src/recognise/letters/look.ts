import { boxOfPoints, type Box } from '../../geometry/box.js'
import { CHARACTERS } from './characters.js'
import { featuresOf } from './features.js'
import { contoursOf, type Ink } from './ink.js'
import { project, references } from './references.js'

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

/** @param ink upright: the baseline runs along x */
export function lookAt(ink: Ink): Look | undefined {
  const box = boxOfPoints(contoursOf(ink).flat())
  if (!box) return undefined
  const least = THINNEST * Math.max(box.width, box.height)
  if (!(Math.min(box.width, box.height) > least)) return undefined
  const known = references()
  const point = project(known, featuresOf(ink, box))
  const nearest = new Map<string, number>()
  const { dimensions, points, records } = known
  records.forEach(({ label }, i) => {
    const best = nearest.get(label) ?? Infinity
    let sum = 0
    for (let d = 0, at = i * dimensions; d < dimensions && sum < best; d++, at++) sum += (point[d] - points[at]) ** 2
    if (sum < best) nearest.set(label, sum)
  })
  const likenesses = CHARACTERS.flatMap((label): Likeness[] => {
    const square = nearest.get(label)
    return square === undefined ? [] : [{ label, distance: Math.sqrt(square) }]
  })
  return { box, likenesses: likenesses.sort((a, b) => a.distance - b.distance) }
}
