import { describe, expect, it } from 'vitest'
import { Coordinate, Distance, Length, LONGEST, MILLIMETRES_PER_INCH, toMillimetres } from '../../src/sign/length.js'

describe('lengths', () => {
  it('takes the inch as 25.4 mm (international yard and pound agreement, 1959)', () => {
    expect(MILLIMETRES_PER_INCH).toBe(25.4)
    expect(toMillimetres(1, 'in')).toBe(25.4)
  })

  it('turns the printed inch figures into the millimetres that limits become by the same multiplication', () => {
    // 2010 ADA Standards, 703.3.1: 0.241 in and 0.300 in for the cell spacing.
    expect(toMillimetres({ value: 0.241, unit: 'in' }, 'mm')).toBe(0.241 * 25.4)
    expect(toMillimetres(0.3, 'in')).toBe(0.3 * 25.4)
  })

  it('leaves millimetres alone, whatever the units of the description', () => {
    expect(toMillimetres({ value: 6.9, unit: 'mm' }, 'in')).toBe(6.9)
    expect(toMillimetres(6.9, 'mm')).toBe(6.9)
  })

  // Invented values: what is a length and what is none.
  it.each([
    0,
    -1,
    LONGEST * 2,
    Infinity,
    NaN,
    '6.9',
    null,
    { value: 1 },
    { value: 1, unit: 'ft' },
    { value: -1, unit: 'in' },
  ])('refuses %j as a length', (value) => expect(Length.safeParse(value).success).toBe(false))

  it.each([0.001, LONGEST, 5e-324, { value: 0.1, unit: 'in' }])('takes %j as a length', (value) =>
    expect(Length.safeParse(value).success).toBe(true),
  )

  it('lets a distance be zero and a coordinate be negative', () => {
    expect(Distance.safeParse(0).success).toBe(true)
    expect(Distance.safeParse(-1).success).toBe(false)
    expect(Coordinate.safeParse(-1).success).toBe(true)
    expect(Coordinate.safeParse(-2 * LONGEST).success).toBe(false)
  })
})
