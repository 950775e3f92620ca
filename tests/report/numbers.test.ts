import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decimalsFor, fixed, kept, write } from '../../src/report/numbers.js'

/** 0.063 inch: the upper end of the dot base diameter, 2010 ADA Standards, Table 703.3.1. */
const DOT_BASE_MAX = 0.063 * 25.4

/** The first number that a text shows, in millimetres. */
const shown = (text: string | undefined): number => Number.parseFloat(text ?? '')
const shownInches = (text: string | undefined): number => Number.parseFloat((text ?? '').split('(')[1] ?? '')

describe('numbers beside their limit', () => {
  it('shows as many digits as the verdict needs', () => {
    expect(write(1.598, { max: DOT_BASE_MAX }, 'length', false).value).toMatch(/^1\.60 mm/)
    const over = write(1.6022, { max: DOT_BASE_MAX }, 'length', true)
    expect([over.value, over.max]).toEqual(['1.602 mm (0.0631 in)', '1.6002 mm (0.063 in)'])
  })

  // Values and limits are invented; the claim is about all of them.
  it('never shows a failing value on its limit or a passing value beyond it, in either unit', () => {
    const number = fc.double({ min: 0.05, max: 2000, noNaN: true })
    const excess = fc.double({ min: 0.0011, max: 5, noNaN: true })
    fc.assert(
      fc.property(number, excess, fc.boolean(), (end, by, upper) => {
        const value = upper ? end + by : end - by
        const failing = write(value, upper ? { max: end } : { min: end }, 'length', true)
        const limit = upper ? failing.max : failing.min
        expect(Math.sign(shown(failing.value) - shown(limit))).toBe(upper ? 1 : -1)
        expect(Math.sign(shownInches(failing.value) - shownInches(limit))).toBe(upper ? 1 : -1)
        const passing = write(value, upper ? { min: end } : { max: end }, 'length', false)
        expect(Math.sign(shown(passing.value) - shown(upper ? passing.min : passing.max))).not.toBe(upper ? -1 : 1)
      }),
      { numRuns: 300 },
    )
  })

  it('shows a value that passes within the noise of arithmetic as equal to its end', () => {
    const { value, max } = write(7.6204, { max: 7.62 }, 'length', false)
    expect(shown(value)).toBe(shown(max))
  })

  it('keeps the order of numbers that differ and drops what float64 adds', () => {
    expect(kept(0.241 * 25.4)).toBe(6.1214)
    expect(kept(0.1 + 0.2)).toBe(0.3)
    expect(kept(-0)).toBe(0)
    expect(kept(Number.NaN)).toBeNull()
    expect(kept(undefined)).toBeNull()
    expect(fixed(-0.0001, 2)).toBe('0.00')
  })

  it('writes shares in percent, contrast to one and spacing in strokes', () => {
    expect(write(0.1504, { max: 0.15 }, 'percent', true).value).toBe('15.04 %')
    expect(write(2.999, { min: 3 }, 'to-one', true).value).toBe('2.999:1')
    expect(write(4.6, { max: 4 }, 'times', true).value).toBe('4.60 times')
  })

  it('gives up on more digits when no number of them would help', () => {
    expect(decimalsFor(1, { max: 1 }, true, 2)).toBe(6)
  })
})
