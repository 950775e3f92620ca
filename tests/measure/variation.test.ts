import { describe, expect, test } from 'vitest'
import { drawn, drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, valuesOf } from './values.js'

/** Australian Braille Authority, sizes for signs: no more than 1 % on one sign. Signs and values are invented. */
const QUANTITY = 'braille.variation'
const SIZES = ['dotBaseDiameter', 'dotHeight', 'dotSpacing', 'cellSpacing', 'lineSpacing']
const readings = (values: Record<string, number[]>) =>
  signOf(PUMP_ROOM, {
    measured: Object.entries(values).map(([size, list]) => ({ quantity: `braille.${size}`, values: list })),
  })
const STEADY = Object.fromEntries(SIZES.map((size) => [size, [1.5, 1.5]]))

describe('variation of the braille’s sizes', () => {
  test('single declared figures tell nothing of it: every size is asked for', () => {
    const { observations, gaps } = measured(signOf(PUMP_ROOM), QUANTITY)
    expect(observations).toEqual([])
    expect(gaps.map(({ reason }) => reason)).toEqual(SIZES.map(() => 'missing-fact'))
    for (const [i, size] of SIZES.entries()) expect(gaps[i]?.ask?.ask).toContain(`braille.${size}`)
  })

  test('is the greatest deviation from the mean, over the mean', () => {
    // By hand: the mean of 1.5, 1.5 and 1.53 is 1.51; 0.02 / 1.51
    const { observations, gaps } = measured(readings({ ...STEADY, dotHeight: [1.5, 1.5, 1.53] }), QUANTITY)
    expect(gaps).toEqual([])
    expect(Math.max(...observations.map(({ value }) => Number(value)))).toBeCloseTo(0.02 / 1.51, 12)
    expect(observations.filter(({ value }) => value === 0)).toHaveLength(SIZES.length - 1)
  })

  test('readings are of the whole sign and need two', () => {
    const { gaps } = measured(readings({ ...STEADY, dotHeight: [1.5] }), QUANTITY)
    expect(gaps).toHaveLength(1)
    expect(gaps[0]?.ask?.ask).toContain('braille.dotHeight')
  })

  test('two blocks that are declared unlike differ already, and may differ more', () => {
    const block = signOf(PUMP_ROOM).braille[0]
    const sign = { ...signOf(PUMP_ROOM), braille: [block, { ...block, dotHeight: drawn(0.8) }] }
    sign.braille[1].dotHeight = { value: 0.8, basis: 'declared' }
    const { observations, gaps } = measured(sign, QUANTITY)
    // By hand: 0.75 and 0.8 deviate by 0.025 from their mean, 0.775
    expect(Math.max(...observations.map(({ value }) => Number(value)))).toBeCloseTo(0.025 / 0.775, 12)
    expect(gaps.length).toBeGreaterThan(0)
  })

  test('drawn sizes are known with their extremes; the height of dots stays open', () => {
    const sign = drawnSign()
    const drawnSizes = { dotBaseDiameter: { ...drawn(1.5), min: 1.48, max: 1.51, count: 20 } }
    const spacings = { dotSpacing: fact(2.4), cellSpacing: fact(6.9), lineSpacing: { ...drawn(10.1), count: 1 } }
    const braille = sign.braille.map((block) => ({ ...block, ...drawnSizes, ...spacings }))
    const { observations, gaps } = measured({ ...sign, braille }, QUANTITY)
    expect(Number(observations[0]?.value)).toBeCloseTo(0.02 / 1.5, 12)
    expect(gaps.map(({ ask }) => ask?.ask)).toEqual([expect.stringContaining('braille.dotHeight')])
  })

  test('one line has no line spacing that could vary', () => {
    const sign = signOf(PUMP_ROOM, { 'braille.0.lines': ['pump'] })
    expect(
      measured(sign, QUANTITY)
        .gaps.map(({ ask }) => ask?.ask)
        .join(),
    ).not.toContain('lineSpacing')
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), QUANTITY).nothing).toContain('no braille')
  })

  test('a measured variation settles it', () => {
    const sign = signOf(PUMP_ROOM, { measured: [{ quantity: QUANTITY, values: [0.008], unit: 'ratio' }] })
    expect(valuesOf(sign, QUANTITY)).toEqual([0.008])
  })
})

const fact = (value: number) => ({ ...drawn(value), min: value, max: value, count: 8 })
