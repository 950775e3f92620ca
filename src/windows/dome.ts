import { domeOf } from '../geometry/dome.js'
import { isEmpty, type Ends } from './ends.js'

/**
 * Which heights and diameters of a dot keep its dome radius. The dome is taken to be the cap of a sphere, of which the Australian Braille
 * Authority's specification for signage limits the radius: r = (d² / 4 + h²) / 2h, from the triangle of the sphere's centre, the
 * middle of the base and the edge of the base. Holds for d > 0 and h > 0; a cap higher than d / 2 overhangs its base.
 */

/**
 * The heights at which a dot of this base diameter keeps its radius: none, one range, or two with the rounder domes between them left
 * out. The radius is least where the height is half the diameter and grows to both sides.
 */
export function heightsFor(diameter: number, { min = 0, max = Infinity }: Ends): Ends[] {
  const half = diameter / 2
  if (max < half) return []
  const outer = spread(max, half)
  const all: Ends = max === Infinity ? { min: 0 } : { min: max - outer, max: max + outer }
  if (min <= half) return [all]
  const inner = spread(min, half)
  const parts: Ends[] = [
    { min: all.min, max: min - inner },
    { min: min + inner, ...(all.max !== undefined && { max: all.max }) },
  ]
  return parts.filter((part) => !isEmpty(part))
}

/** Of ranges of heights the one to aim in: one in which the dome need not overhang its base, else the one with most room. */
export function roomiest(ranges: readonly Ends[], diameter: number): Ends | undefined {
  const upright = ranges.filter(({ min = 0 }) => min < diameter / 2)
  return [...(upright.length > 0 ? upright : ranges)].sort((a, b) => room(b) - room(a))[0]
}

export const room = ({ min = 0, max = Infinity }: Ends): number => max - min

/** How far from the radius the two heights lie that give it: r ± √(r² − d² / 4). */
const spread = (radius: number, half: number): number => Math.sqrt(Math.max(0, radius ** 2 - half ** 2))

/** The base diameters at which a dot of this height keeps its radius, which grows with the diameter; undefined for none. */
export function diametersFor(height: number, { min, max }: Ends): Ends | undefined {
  const diameter = (radius: number) => 2 * Math.sqrt(Math.max(0, 2 * radius * height - height ** 2))
  // No base, however small, gives less than half the height.
  if (max !== undefined && max < height / 2) return undefined
  return {
    ...(min !== undefined && { min: diameter(min) }),
    ...(max !== undefined && { max: diameter(max) }),
  }
}

/** The radii that the dots of a range of diameters and a range of heights have. */
export function radiiOf(diameters: Ends, heights: Ends): Ends {
  const smallest = diameters.min ?? 0
  const roundest = Math.min(Math.max(smallest / 2, heights.min ?? 0), heights.max ?? Infinity)
  const min = smallest > 0 && roundest > 0 ? domeOf(smallest, roundest).radius : roundest / 2
  const isBounded = diameters.max !== undefined && heights.max !== undefined && (heights.min ?? 0) > 0
  if (!isBounded) return { min }
  const [widest, low, high] = [diameters.max ?? 0, heights.min ?? 0, heights.max ?? 0]
  return { min, max: Math.max(domeOf(widest, low).radius, domeOf(widest, high).radius) }
}
