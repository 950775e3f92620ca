import { describe, expect, test } from 'vitest'
import { domeOf } from '../../src/geometry/dome.js'

describe('a dome', () => {
  // Australian Braille Authority, braille signage specification: dots 1.5 to 1.6 mm wide and 0.6 to 0.9 mm high with a dome radius of
  // 0.76 to 0.81 mm. The heights that keep the radius are worked out from its formula, r = (d²/4 + h²) / 2h, by hand.
  test('keeps the radius of the Australian specification or not', () => {
    const keeps = (base: number, height: number): boolean => {
      const { radius } = domeOf(base, height)
      return radius >= 0.76 && radius <= 0.81
    }
    expect(domeOf(1.5, 0.75).radius).toBeCloseTo(0.75, 12)
    expect(domeOf(1.6, 0.6).radius).toBeCloseTo(0.833, 3)
    expect(keeps(1.5, 0.75)).toBe(false)
    expect(keeps(1.6, 0.6)).toBe(false)
    expect([0.6, 0.637, 0.883, 0.9].map((height) => keeps(1.5, height))).toEqual([true, true, true, true])
    expect([0.64, 0.88].map((height) => keeps(1.5, height))).toEqual([false, false])
    expect([0.6, 0.75, 0.9].map((height) => keeps(1.55, height))).toEqual([true, true, true])
    expect([0.684, 0.683].map((height) => keeps(1.6, height))).toEqual([true, false])
  })

  // Plane and solid geometry: a half ball of radius 1 has the volume 2π/3 and stands upright on its base
  test('that is a half ball stands upright', () => {
    const dome = domeOf(2, 1)
    expect(dome.radius).toBe(1)
    expect(dome.contactAngle).toBeCloseTo(90, 12)
    expect(dome.volume).toBeCloseTo((2 * Math.PI) / 3, 12)
    expect(dome.overhangs).toBe(false)
  })

  // For a flat cap the contact angle is that of the circle, sin θ = (d/2) / r
  test('has the contact angle of its circle', () => {
    const { contactAngle, radius, overhangs } = domeOf(1.6, 0.5)
    expect(Math.sin((contactAngle * Math.PI) / 180)).toBeCloseTo(0.8 / radius, 12)
    expect(overhangs).toBe(false)
  })

  test('overhangs when it is higher than half its base is wide', () => {
    expect(domeOf(1.5, 0.9)).toMatchObject({ overhangs: true })
    expect(domeOf(1.5, 0.9).contactAngle).toBeGreaterThan(90)
  })

  test('has a size', () => {
    for (const [base, height] of [
      [0, 1],
      [1, 0],
      [NaN, 1],
    ] as const)
      expect(() => domeOf(base, height)).toThrow(RangeError)
  })
})
