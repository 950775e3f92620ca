import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { domeOf } from '../../src/geometry/dome.js'
import { diametersFor, heightsFor, radiiOf } from '../../src/windows/dome.js'
import { isWithin } from '../../src/windows/ends.js'

/** Australian Braille Authority, specifications for braille on signage (brailleaustralia.org/?p=60): base, height, radius. */
const BASE = { min: 1.5, max: 1.6 }
const HEIGHT = { min: 0.6, max: 0.9 }
const RADIUS = { min: 0.76, max: 0.81 }

describe('the dome of a dot', () => {
  // Worked out by hand from r = (d² / 4 + h²) / 2h within the Authority's ranges, to a thousandth of a millimetre.
  it.each([
    [
      1.5,
      [
        [0.504, 0.637],
        [0.883, 1.116],
      ],
    ],
    [1.6, [[0.683, 0.937]]],
  ])('of base %s mm keeps the radius at these heights', (diameter, ranges) => {
    const found = heightsFor(diameter, RADIUS).map(({ min = NaN, max = NaN }) => [min, max])
    expect(found).toHaveLength(ranges.length)
    found.flat().forEach((end, i) => expect(end).toBeCloseTo(ranges.flat()[i], 3))
  })

  it('keeps it at every height from 0.6 to 0.9 mm where the base is 1.55 mm', () => {
    const [only, ...others] = heightsFor(1.55, RADIUS)
    expect(others).toEqual([])
    expect(isWithin(HEIGHT.min, only) && isWithin(HEIGHT.max, only)).toBe(true)
  })

  it('has no height where the sphere is smaller than half the base, and every one where nothing limits it', () => {
    expect(heightsFor(1.6, { max: 0.7 })).toEqual([])
    expect(heightsFor(1.6, {})).toEqual([{ min: 0 }])
    expect(diametersFor(0.9, { max: 0.4 })).toBeUndefined()
  })

  const size = fc.double({ min: 0.1, max: 5, noNaN: true })
  it('agrees with the formula, whichever length is asked for', () => {
    fc.assert(
      fc.property(size, size, size, size, (diameter, height, a, b) => {
        const radii = { min: Math.min(a, b), max: Math.max(a, b) }
        const radius = domeOf(diameter, height).radius
        // At an end itself float64 may fall to either side.
        if ([a, b].some((end) => Math.abs(end - radius) < 1e-6)) return
        const keeps = radius > radii.min && radius < radii.max
        expect(heightsFor(diameter, radii).some((range) => isWithin(height, range))).toBe(keeps)
        const diameters = diametersFor(height, radii)
        expect(diameters !== undefined && isWithin(diameter, diameters)).toBe(keeps)
      }),
      { numRuns: 300 },
    )
  })

  it('has radii between those that are tried out on a fine grid', () => {
    const steps = Array.from({ length: 101 }, (_, i) => i / 100)
    const at = ({ min, max }: typeof BASE, share: number) => min + share * (max - min)
    const all = steps.flatMap((i) => steps.map((j) => domeOf(at(BASE, i), at(HEIGHT, j)).radius))
    const { min, max } = radiiOf(BASE, HEIGHT)
    expect(min).toBeCloseTo(Math.min(...all), 9)
    expect(max).toBeCloseTo(Math.max(...all), 9)
  })
})
