import { describe, expect, test } from 'vitest'
import { asMeasured, COVERAGE, mean, nobodys, readingOf, standardUncertainty } from '../../src/measure/as-measured.js'
import { isKnown, type Fact, type MeasuredQuantity, type Sign } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf, TWO_SETS } from './signs.js'

/**
 * Readings in the place of lengths. A standard uncertainty is the expanded one over its coverage factor of 2 (JCGM 100:2008, 6.3.3), that of a
 * product is found to first order (5.1.2). All readings are invented.
 */

type Json = Record<string, unknown>
const [set] = PUMP_ROOM.lettering as Json[]
const read = (...measured: Json[]): Json => ({ measured: measured.map((one) => ({ values: [1], ...one })) })
const known = <T>(fact: Fact<T> | undefined) => (isKnown(fact) ? fact : undefined)
const measuredSign = (values: Json, base = PUMP_ROOM): Sign => asMeasured(signOf(base, values))
const firstOf = (values: Json, base = PUMP_ROOM) => measuredSign(values, base).lettering[0]

const HEIGHT = 'raised.characterHeight'
const STROKE = 'raised.strokeThickness'

describe('readings of one quantity', () => {
  test('are taken together, with the worst of their uncertainties', () => {
    const sign = signOf(
      PUMP_ROOM,
      read(
        { quantity: HEIGHT, values: [19, 21], expandedUncertainty: 0.2 },
        { quantity: HEIGHT, values: [23], expandedUncertainty: 0.6 },
        { quantity: 'raised.relief', values: [0.9] },
      ),
    )
    expect(readingOf(sign, HEIGHT)).toEqual({
      value: 21,
      min: 19,
      max: 23,
      count: 3,
      uncertainty: 0.6 / COVERAGE,
      basis: 'measured',
      places: sign.measured.slice(0, 2).map(({ place }) => place),
    })
    expect(readingOf(sign, 'braille.dotHeight')).toBeUndefined()
  })

  test('without an uncertainty have none', () => {
    const sign = signOf(PUMP_ROOM, read({ quantity: HEIGHT, values: [19] }))
    expect(readingOf(sign, HEIGHT)).not.toHaveProperty('uncertainty')
    const [one] = sign.measured
    expect(standardUncertainty({ ...one, expandedUncertainty: 0.3 })).toBe(0.15)
    expect(standardUncertainty(one)).toBeUndefined()
  })

  test('without a value are none', () => {
    const sign = signOf(PUMP_ROOM, read({ quantity: HEIGHT }))
    const empty: MeasuredQuantity[] = sign.measured.map((one) => ({ ...one, values: [] }))
    expect(readingOf({ ...sign, measured: empty }, HEIGHT)).toBeUndefined()
  })

  test('have the mean that arithmetic gives them', () => expect(mean([1, 2, 6])).toBe(3))
})

describe('the lengths of characters', () => {
  test('are those that were read', () => {
    const { characterHeight, characterSpacing, relief } = firstOf(
      read({ quantity: HEIGHT, values: [21] }, { quantity: 'raised.characterSpacing', values: [5] }),
    )
    expect(known(characterHeight)).toMatchObject({ value: 21, basis: 'measured' })
    expect(known(characterSpacing)).toMatchObject({ value: 5, basis: 'measured' })
    expect(known(relief)).toMatchObject({ value: 1, basis: 'declared' })
  })

  test('stay as they were where nothing of theirs was read', () => {
    const sign = signOf(PUMP_ROOM)
    expect(asMeasured(sign)).toBe(sign)
    const other = signOf(PUMP_ROOM, read({ quantity: 'braille.cellSpacing' }))
    expect(asMeasured(other).lettering).toEqual(other.lettering)
    expect(asMeasured(other).braille).toBe(other.braille)
  })

  test('of dots are those that were read, of all blocks', () => {
    const { braille } = measuredSign(read({ quantity: 'braille.dotBaseDiameter', values: [1.6] }))
    expect(known(braille[0]?.dotBaseDiameter)).toMatchObject({ value: 1.6, basis: 'measured' })
    expect(known(braille[0]?.dotHeight)).toMatchObject({ value: 0.75, basis: 'declared' })
    const high = measuredSign(read({ quantity: 'braille.dotHeight', values: [0.8] })).braille
    expect(known(high[0]?.dotHeight)).toMatchObject({ value: 0.8, basis: 'measured' })
  })

  test('for sight are read for themselves, and their gap and stroke as shares only', () => {
    const sight = { quantity: 'visual.characterHeight', values: [25] }
    const [seen, felt] = measuredSign(read(sight), TWO_SETS).lettering
    expect([known(seen?.characterHeight)?.value, known(felt?.characterHeight)?.value]).toEqual([25, 20])
    const spaced = measuredSign(read({ quantity: 'visual.characterSpacing', values: [0.3] }), TWO_SETS).lettering
    expect(known(spaced[0]?.characterSpacing)).toMatchObject({ value: 4, basis: 'declared' })
  })
})

describe('the stroke', () => {
  test('follows from a measured share and the height', () => {
    const share = { quantity: STROKE, values: [0.1, 0.12, 0.14], expandedUncertainty: 0.02 }
    const { strokeThickness } = firstOf(read(share))
    const stroke = known(strokeThickness)
    expect(stroke).toMatchObject({ basis: 'measured', count: 3 })
    expect(stroke?.value).toBeCloseTo(0.12 * 20, 12)
    expect(stroke?.min).toBeCloseTo(0.1 * 20, 12)
    expect(stroke?.max).toBeCloseTo(0.14 * 20, 12)
    expect(stroke?.uncertainty).toBeCloseTo(0.01 * 20, 12)
  })

  test('has the uncertainties of both in it', () => {
    const height = { quantity: HEIGHT, values: [25], expandedUncertainty: 0.8 }
    const share = { quantity: STROKE, values: [0.2], expandedUncertainty: 0.02 }
    const stroke = known(firstOf(read(height, share)).strokeThickness)
    expect(stroke?.value).toBeCloseTo(5, 12)
    expect(stroke?.uncertainty).toBeCloseTo(Math.hypot(0.01 * 25, 0.2 * 0.4), 12)
    const alone = known(firstOf(read(height, { quantity: STROKE, values: [0.2] })).strokeThickness)
    expect(alone?.uncertainty).toBeCloseTo(0.2 * 0.4, 12)
    expect(known(firstOf(read({ quantity: STROKE, values: [0.2] })).strokeThickness)).not.toHaveProperty('uncertainty')
  })

  test('does not follow from a share without a height', () => {
    const { strokeThickness } = firstOf({
      ...read({ quantity: STROKE, values: [0.2] }),
      'lettering.0.characterHeight': undefined,
    })
    expect(known(strokeThickness)).toMatchObject({ value: 2.6, basis: 'declared' })
  })

  test('may be read as a length too', () => {
    const { strokeThickness } = firstOf(read({ quantity: 'raised.strokeWidth', values: [3] }))
    expect(known(strokeThickness)).toMatchObject({ value: 3, basis: 'measured' })
  })
})

describe('characters of several sizes', () => {
  const sizes = (first: Json, second: Json, ...readings: Json[]) => ({
    lettering: [
      { ...set, ...first },
      { ...set, text: 'PUMP', lines: ['PUMP'], baselineSpacing: undefined, ...second },
    ],
    ...read(...readings),
  })
  const height = { quantity: HEIGHT, values: [22] }
  const signed = (first: Json, second: Json, ...readings: Json[]) =>
    signOf(PUMP_ROOM, sizes(first, second, ...readings))
  const heightsOf = (sign: Sign) => asMeasured(sign).lettering.map((l) => known(l.characterHeight)?.value)

  test('that are equal, or all unknown, have the reading', () => {
    expect(heightsOf(signed({}, {}, height))).toEqual([22, 22])
    const unknown = { characterHeight: undefined }
    expect(heightsOf(signed(unknown, unknown, height))).toEqual([22, 22])
  })

  test('that differ, or of which one is unknown, have none: it is not told whose it is', () => {
    for (const second of [{ characterHeight: 16 }, { characterHeight: undefined }]) {
      const sign = signed({}, second, height)
      expect(heightsOf(sign)[0]).toBe(20)
      expect(nobodys(sign.lettering[0], 'characterHeight', sign)).toBe(true)
    }
    const first = signed({ characterHeight: undefined }, {}, height)
    expect(heightsOf(first)).toEqual([undefined, 20])
  })

  test('of which nothing was read are nobody’s', () => {
    const sign = signed({}, { characterHeight: 16 }, { quantity: 'raised.relief', values: [0.9] })
    expect(nobodys(sign.lettering[0], 'characterHeight', sign)).toBe(false)
    const equal = signed({}, {}, height)
    expect(nobodys(equal.lettering[0], 'characterHeight', equal)).toBe(false)
    const other = signed({}, { relief: 0.8 }, { quantity: 'raised.relief', values: [0.9] })
    expect(nobodys(other.lettering[0], 'relief', other)).toBe(false)
  })

  test('with strokes that differ make a reading of either kind nobody’s', () => {
    for (const quantity of [STROKE, 'raised.strokeWidth']) {
      const sign = signed({}, { strokeThickness: 2 }, { quantity, values: [2.5] })
      expect(nobodys(sign.lettering[0], 'strokeThickness', sign)).toBe(true)
      expect(asMeasured(sign).lettering.map((l) => known(l.strokeThickness)?.value)).toEqual([2.6, 2])
    }
  })

  test('for touch and for sight are told apart', () => {
    const sign = signOf(TWO_SETS, { 'lettering.0.characterHeight': 30, ...read(height) })
    expect(heightsOf(sign)).toEqual([30, 22])
    expect(nobodys(sign.lettering[1], 'characterHeight', sign)).toBe(false)
  })
})
