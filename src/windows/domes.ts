import { heightsFor, radiiOf, roomiest } from './dome.js'
import { isEmpty, meet, type Ends } from './ends.js'
import { smallestExcluding } from './excluding.js'
import type { RowInForce } from './in-force.js'
import type { Conflict, Window } from './window.js'

/** The joint region of the base diameter and the height of a dot, where a standard limits the radius of its dome. */

export const DIAMETER = 'braille.dotBaseDiameter'
export const HEIGHT = 'braille.dotHeight'
export const RADIUS = 'braille.domeRadius'

/** What is left of the heights at one diameter; two ranges where the rounder domes between them are too small in radius. */
export interface Corner {
  diameter: number
  heights: Ends[]
}

export interface JointRegion {
  isEmpty: false
  /** Those that limit the radius. */
  rows: RowInForce[]
  radius: Ends
  /** At each end of the window of the diameter, once where it is a single value. */
  corners: Corner[]
  /** The middle of the diameters, with the middle of a range of heights there, if possible of one without domes that overhang. */
  example: { diameter: number; height: number } | undefined
}

type Found = JointRegion | { isEmpty: true; conflict: Conflict }

/** Undefined when no row limits the radius. A diameter or height that nothing limits is open. */
export function domesOf(windows: readonly Window[]): Found | undefined {
  const [diameter, height, radius] = [DIAMETER, HEIGHT, RADIUS].map((name) => windows.find((w) => w.quantity === name))
  if (!radius) return undefined
  const rows = [radius, diameter, height].flatMap((window) => window?.rows ?? [])
  const [diameters, heights, radii] = [endsOf(diameter), endsOf(height), endsOf(radius)]
  if (isEmpty(meet(radiiOf(diameters, heights), radii))) return { isEmpty: true, conflict: conflictOf(rows) }
  const corner = (at: number): Corner => ({ diameter: at, heights: left(at, heights, radii) })
  const ends = [diameters.min, diameters.max].filter((end) => end !== undefined)
  return {
    isEmpty: false,
    rows: radius.rows,
    radius: radii,
    corners: [...new Set(ends)].map(corner),
    example: exampleOf(ends, corner),
  }
}

const endsOf = (window: Window | undefined): Ends => (window && 'ends' in window.region ? window.region.ends : {})

const left = (diameter: number, heights: Ends, radii: Ends): Ends[] =>
  heightsFor(diameter, radii)
    .map((some) => meet(some, heights))
    .filter((some) => !isEmpty(some))

function exampleOf(ends: readonly number[], corner: (at: number) => Corner): JointRegion['example'] {
  const [from, to] = ends
  if (from === undefined || to === undefined) return undefined
  const { diameter, heights } = corner((from + to) / 2)
  const range = roomiest(heights, diameter)
  if (range?.min === undefined || range.max === undefined) return undefined
  return { diameter, height: (range.min + range.max) / 2 }
}

function conflictOf(rows: readonly RowInForce[]): Conflict {
  const isPossible = (some: readonly RowInForce[]): boolean => {
    const [diameters, heights, radii] = [DIAMETER, HEIGHT, RADIUS].map((name) =>
      some
        .filter(({ row }) => row.quantity === name)
        .map(({ limit: { min, max } }): Ends => ({ min, max }))
        .reduce(meet, {}),
    )
    return !isEmpty(meet(radiiOf(diameters ?? {}, heights ?? {}), radii ?? {}))
  }
  const [smallest = [...rows]] = smallestExcluding(rows, isPossible)
  return { quantities: [RADIUS, DIAMETER, HEIGHT], rows: smallest, why: 'dome' }
}
