import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const QUANTITY = 'braille.domeRadius'
const dots = (diameter: unknown, height: unknown, more: Record<string, unknown> = {}) =>
  signOf(PUMP_ROOM, { 'braille.0.dotBaseDiameter': diameter, 'braille.0.dotHeight': height, ...more })
const radius = (diameter: number, height: number) => Number(valuesOf(dots(diameter, height), QUANTITY)[0])

describe('the radius of a dome', () => {
  // Australian Braille Authority, sizes for signs: base 1.5 to 1.6, height 0.6 to 0.9, radius 0.76 to 0.81. Heights at which the cap of a
  // sphere keeps that radius, worked by hand from h = r ± √(r² - d²/4): for 1.50 up to 0.6371 and from 0.8829, for 1.60 from 0.6832.
  test.each([
    [1.5, 0.637, true],
    [1.5, 0.638, false],
    [1.5, 0.75, false],
    [1.5, 0.882, false],
    [1.5, 0.883, true],
    [1.52, 0.6, true],
    [1.52, 0.76, true],
    [1.55, 0.6, true],
    [1.55, 0.9, true],
    [1.6, 0.6, false],
    [1.6, 0.683, false],
    [1.6, 0.684, true],
  ])('base %d, height %d: within 0.76 to 0.81 is %s', (diameter, height, within) => {
    const r = radius(diameter, height)
    expect(r >= 0.76 - 1e-9 && r <= 0.81 + 1e-9).toBe(within)
  })

  test('a half sphere has the radius of its base', () => expect(radius(1.6, 0.8)).toBeCloseTo(0.8, 12))

  test('is not asked of dots that are flat or pointed, and is of those of no known shape', () => {
    for (const shape of ['flat', 'pointed'])
      expect(measured(dots(1.5, 0.7, { 'braille.0.dotShape': shape }), QUANTITY).nothing).toContain('no dome')
    expect(valuesOf(dots(1.6, 0.8, { 'braille.0.dotShape': undefined }), QUANTITY)[0]).toBeCloseTo(0.8, 12)
  })

  test('is open without the base or the height, and asks for it', () => {
    const pointers = (sign: ReturnType<typeof dots>) => measured(sign, QUANTITY).gaps.map(({ ask }) => ask?.pointer)
    expect(pointers(dots(1.5, undefined))).toEqual(['/sign/braille/0/dotHeight'])
    expect(pointers(dots(undefined, undefined))).toEqual([
      '/sign/braille/0/dotBaseDiameter',
      '/sign/braille/0/dotHeight',
    ])
  })
})

describe('the radius from readings', () => {
  const read = (quantity: string, values: number[], more: Record<string, unknown> = {}) => ({
    quantity: `braille.${quantity}`,
    values,
    ...more,
  })

  test('heights that were measured take the place of the declared one; the extremes are judged', () => {
    const sign = dots(1.6, 0.6, { measured: [read('dotHeight', [0.7, 0.8, 0.9])] })
    const [observation] = measured(sign, QUANTITY).observations
    // Worked by hand: (0.64 + 0.49) / 1.4, the half sphere at 0.8, (0.64 + 0.81) / 1.8
    expect(observation?.basis).toBe('measured')
    expect(observation?.min).toBeCloseTo(0.8, 9)
    expect(observation?.max).toBeCloseTo(1.13 / 1.4, 9)
    expect(observation?.atLeast).toBeUndefined()
  })

  // by hand, r = (d²/4 + h²) / 2h for d = 1.6: 0.89 at 0.5, 1 / 1.2 at 0.6, 1.45 / 1.8 at 0.9, 0.82 at 1.0; all on one side of 0.8
  test.each([
    [0.5, 0.6, 1 / 1.2, 0.89],
    [0.9, 1, 1.45 / 1.8, 0.82],
  ])('heights from %d to %d never reach the half sphere', (from, to, least, most) => {
    const sign = dots(1.6, 0.6, { measured: [read('dotHeight', [from, to])] })
    const { observations, gaps } = measured(sign, QUANTITY)
    expect(observations[0]?.min).toBeCloseTo(least, 9)
    expect(observations[0]?.max).toBeCloseTo(most, 9)
    expect(gaps).toEqual([])
  })

  test('a base and a height that are given as one number each have neither extremes nor an uncertainty', () => {
    const { observations, gaps } = measured(dots(1.6, 0.6), QUANTITY)
    expect(observations).toHaveLength(1)
    for (const key of ['min', 'max', 'uncertainty', 'atLeast']) expect(observations[0]).not.toHaveProperty(key)
    expect(gaps).toEqual([])
  })

  test('where both vary, a radius outside shows nothing: bases and heights are of unlike dots', () => {
    const sign = dots(1.5, 0.7, {
      measured: [read('dotHeight', [0.6, 0.9]), read('dotBaseDiameter', [1.5, 1.6])],
    })
    expect(measured(sign, QUANTITY).observations[0]?.atLeast?.ask?.pointer).toBe('/sign/measured')
  })

  test('a measured radius settles it', () => {
    const sign = dots(undefined, undefined, { measured: [read('domeRadius', [0.78])] })
    expect(valuesOf(sign, QUANTITY)).toEqual([0.78])
    expect(reasonsOf(sign, QUANTITY)).toEqual([])
  })

  // JCGM 100:2008, 5.1.2, by finite differences
  test('carries the uncertainties of base and height', () => {
    const sign = dots(1.55, 0.7, {
      measured: [
        read('dotHeight', [0.7], { expandedUncertainty: 0.04 }),
        read('dotBaseDiameter', [1.55], { expandedUncertainty: 0.02 }),
      ],
    })
    const step = 1e-6
    const byHeight = (radius(1.55, 0.7 + step) - radius(1.55, 0.7)) / step
    const byBase = (radius(1.55 + step, 0.7) - radius(1.55, 0.7)) / step
    expect(measured(sign, QUANTITY).observations[0]?.uncertainty).toBeCloseTo(
      Math.hypot(byHeight * 0.02, byBase * 0.01),
      6,
    )
  })
})
