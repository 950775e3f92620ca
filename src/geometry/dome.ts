/**
 * A dot as a drop makes it: a cap cut off a sphere (W. H. Beyer, CRC Standard Mathematical Tables, spherical segment of one base; values
 * from memory). Lengths in millimetres, angles in degrees.
 */

export interface Dome {
  /** Of the sphere. */
  radius: number
  /** Between the base and the surface where they meet, on the inside; more than 90 where the dome overhangs its base. */
  contactAngle: number
  /** Cubic millimetres. */
  volume: number
  /** Higher than half its base is wide: it is wider above its base than at it. */
  overhangs: boolean
}

const DEGREES = 180 / Math.PI

/**
 * The spherical cap of a base and a height: r = (d²/4 + h²) / 2h.
 * @throws {RangeError} unless both are more than 0
 */
export function domeOf(baseDiameter: number, height: number): Dome {
  if (!(baseDiameter > 0 && height > 0)) throw new RangeError('a dome has a base and a height of more than 0')
  const half = baseDiameter / 2
  return {
    radius: (half ** 2 + height ** 2) / (2 * height),
    contactAngle: 2 * Math.atan(height / half) * DEGREES,
    volume: ((Math.PI * height) / 6) * (3 * half ** 2 + height ** 2),
    overhangs: height > half,
  }
}
