import type { Drawing } from '../drawing/drawing.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type Assumption, type BrailleBlock } from '../sign/sign.js'
import { nearbyOf, type Nearby } from './nearby.js'

/**
 * Is the scale of the drawing the one it was made at? Programs write sizes without a unit that they mean in points, or in
 * millimetres. Braille tells: the distance of dots in a cell is nearly the same the world over.
 */

/**
 * Distance of neighbouring dots in a cell that true braille has, in millimetres. The ends are a little beyond those of the
 * 2010 ADA Standards, Table 703.3.1 (2.3 mm to 2.5 mm), so that a sign that just misses them is still seen as true to scale.
 */
const TRUE_SPACING = { min: 2.2, max: 2.6 }
const MILLIMETRES_PER_INCH = 25.4
/** Dots that are looked at: the nearest neighbours of some tell as much as those of all. */
const MOST_DOTS = 2000
/** Of all distances to the nearest dot, the one that so large a share of them does not exceed: most dots have one in their cell. */
const NEAR = 0.2

interface OtherScale {
  millimetresPerUnit: number
  name: string
}

const OTHER_SCALES: OtherScale[] = [
  { millimetresPerUnit: MILLIMETRES_PER_INCH / 72, name: '72 units per inch' },
  { millimetresPerUnit: MILLIMETRES_PER_INCH / 96, name: '96 units per inch' },
  { millimetresPerUnit: 1, name: '1 unit = 1 mm' },
]

/** The doubt about the scale, when the dots look like true braille at another common one and not at this one. */
export function doubtOfScale(
  { scale }: Drawing,
  blocks: readonly BrailleBlock[],
  dots: readonly Point[],
): Assumption[] {
  if (scale.from !== 'css-px') return []
  const read = blocks.flatMap(({ dotSpacing }) => (isKnown(dotSpacing) ? [dotSpacing.value] : []))
  const spacing = read.length > 0 ? Math.min(...read) : neighbourDistance(dots.slice(0, MOST_DOTS))
  if (spacing === undefined || isTrue(spacing)) return []
  return OTHER_SCALES.filter((other) => isTrue((spacing * other.millimetresPerUnit) / scale.millimetresPerUnit)).map(
    ({ millimetresPerUnit, name }) => {
      const then = ((spacing * millimetresPerUnit) / scale.millimetresPerUnit).toFixed(2)
      const text =
        `The scale is doubtful: at ${name} the dots would be ${then} mm apart, as in true braille; at the scale that was ` +
        `taken they are ${spacing.toFixed(2)} mm apart. All lengths here are at the scale that was taken.`
      return { about: 'scale', text, isDoubtful: true }
    },
  )
}

const isTrue = (spacing: number) => spacing >= TRUE_SPACING.min && spacing <= TRUE_SPACING.max

/** How far apart near neighbours are: not the least distance, which two dots drawn askew may have. */
function neighbourDistance(dots: readonly Point[]): number | undefined {
  if (dots.length < 2) return undefined
  const nearby = nearbyOf(dots)
  const distances = dots.map((dot) => nearestOther(dot, dots, nearby)).sort((a, b) => a - b)
  return distances[Math.floor(NEAR * (distances.length - 1))]
}

/** Doubles the radius until another dot is in it. */
function nearestOther(dot: Point, dots: readonly Point[], nearby: Nearby): number {
  for (let radius = 1; ; radius *= 2) {
    const others = nearby(dot.x, dot.y, radius).map((i) => Math.hypot(dots[i].x - dot.x, dots[i].y - dot.y))
    const least = others.filter((d) => d > 0).reduce((a, b) => Math.min(a, b), Infinity)
    if (least < Infinity || others.length >= dots.length) return least
  }
}
