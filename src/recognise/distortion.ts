import { boxOfContour } from '../geometry/curve.js'
import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import type { Dot } from './dots.js'
import { roundOf } from './round.js'
import { deviation, lengthOf, type Steps } from './steps.js'

/**
 * Whether a block of braille was drawn out of shape: cells that lean (a sheared drawing), dots farther apart one way than the
 * other, dots that are ellipses (a drawing scaled unequally). A tool that makes braille has one spacing and round dots.
 */
export interface Distortion {
  /** Degrees by which the columns of dots lean from the square to the line, clockwise as seen. */
  lean?: number
  /** Dot spacings along the line and down the cell, millimetres. */
  unequal?: { along: number; down: number }
  /** How much longer than wide the dots are: a share. */
  oblong?: number
}

/** Less is rounding of coordinates: degrees, shares. Ours. */
const LEAST_LEAN = 0.3
const LEAST_UNEQUAL = 0.01
const LEAST_OBLONG = 0.02
/** And what is within so many standard deviations of the fit is noise. */
const CLEARLY = 4
/** Dots that are looked at for being round. */
const MOST_DOTS = 60

export function distortionOf(fitted: Steps, dots: readonly Dot[]): Distortion {
  return { ...leaning(fitted), ...unequal(fitted), ...oblong(dots) }
}

const degrees = (radians: number): number => (radians * 180) / Math.PI
const angleOf = ({ x, y }: Point): number => Math.atan2(y, x)

function leaning(f: Steps): Pick<Distortion, 'lean'> {
  const line = f.cell ?? f.column
  if (!line || !f.row) return {}
  const apart = degrees(angleOf(f.row) - angleOf(line))
  const turn = ((apart % 360) + 360) % 360
  // The rows follow clockwise for braille that is read from the front, the other way round when it is mirrored.
  const lean = turn > 180 ? 270 - turn : turn - 90
  const noise =
    deviation(f, f.index.row) / lengthOf(f.row) + deviation(f, f.cell ? f.index.cell : f.index.column) / lengthOf(line)
  return Math.abs(lean) > Math.max(LEAST_LEAN, CLEARLY * degrees(noise)) ? { lean } : {}
}

function unequal(f: Steps): Pick<Distortion, 'unequal'> {
  if (!f.column || !f.row) return {}
  const [along, down] = [lengthOf(f.column), lengthOf(f.row)]
  const noise = deviation(f, f.index.column) / along + deviation(f, f.index.row) / down
  return Math.abs(along / down - 1) > Math.max(LEAST_UNEQUAL, CLEARLY * noise) ? { unequal: { along, down } } : {}
}

function oblong(dots: readonly Dot[]): Pick<Distortion, 'oblong'> {
  const ratios = dots.slice(0, MOST_DOTS).flatMap(({ shape, contour }) => {
    if (shape.circle) return []
    const outline = shape.contours[contour]
    const { width, height } = boxOfContour(outline)
    return roundOf(outline, Math.max(width, height), true)?.squash ?? []
  })
  const share = medianOf(ratios) - 1
  return share > LEAST_OBLONG ? { oblong: share } : {}
}

/** What to say of a block, one sentence for each. @param element its place, e.g. `braille/0` */
export function distortionWords({ lean, unequal: spacings, oblong: longer }: Distortion, element: string): string[] {
  const words: string[] = []
  if (lean !== undefined)
    words.push(
      `The cells of ${element} lean by ${Math.abs(lean).toFixed(1)} degrees, as in a sheared drawing: their columns of dots ` +
        'do not stand square to the line. Spacings are measured along the line and along the columns.',
    )
  if (spacings)
    words.push(
      `The dots of ${element} are ${spacings.along.toFixed(2)} mm apart along the line and ${spacings.down.toFixed(2)} mm down ` +
        'the cell, as in a drawing that is scaled unequally.',
    )
  if (longer !== undefined)
    words.push(
      `The dots of ${element} are no circles but ${(100 * longer).toFixed(0)} % longer than wide; their diameter is the longer one.`,
    )
  return words
}
